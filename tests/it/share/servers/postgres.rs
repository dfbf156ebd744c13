//! A PostgreSQL of our own: a cluster in a folder, on a port of the loopback.

use super::{Server, free_port};
use std::os::unix::fs::{PermissionsExt, chown};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use tempfile::TempDir;

/// What its user has to say. It is looked for in whatever is printed.
pub const PASSWORD: &str = "sesame/and:more";

/// A running PostgreSQL.
pub struct Postgres {
    pub server: Server,
    /// Its programs.
    bin: PathBuf,
    folder: TempDir,
}

impl Postgres {
    /// Begins a cluster and starts it. It refuses to run as root: then it runs as the user that its package made.
    pub fn start() -> Self {
        Self::start_with(|_| Vec::new())
    }

    /// The same with more settings, made in its folder.
    pub fn start_with(settings: impl Fn(&Path) -> Vec<String>) -> Self {
        let bin = newest();
        let folder = tempfile::tempdir().expect("a folder");
        std::fs::set_permissions(folder.path(), PermissionsExt::from_mode(0o755)).expect("opened");
        let (data, password) = (folder.path().join("data"), folder.path().join("password"));
        std::fs::create_dir(&data).expect("made");
        std::fs::write(&password, PASSWORD).expect("written");
        let settings = settings(folder.path());
        let user = is_root().then(user_of_package);
        if let Some((user, group)) = user {
            for file in walk(folder.path()) {
                chown(file, Some(user), Some(group)).expect("given");
            }
        }
        let mut begin = as_user(&bin.join("initdb"), user);
        begin.arg("-D").arg(&data).args([
            "-U",
            "office",
            "-A",
            "scram-sha-256",
            "-E",
            "UTF8",
            "--locale=C.UTF-8",
        ]);
        begin.arg("--no-sync").arg(format!("--pwfile={}", password.display()));
        let begun = begin.output().expect("initdb runs; tests/vans/run installs it");
        assert!(begun.status.success(), "{}", String::from_utf8_lossy(&begun.stderr));
        let (port, program) = (free_port(), bin.join("postgres"));
        let server = Server::start(port, move || {
            let mut command = as_user(&program, user);
            command.arg("-D").arg(&data).args(["-h", "127.0.0.1", "-p", &port.to_string(), "-k", ""]);
            for setting in &settings {
                command.args(["-c", setting]);
            }
            command.stdout(Stdio::null()).stderr(Stdio::null());
            command
        });
        let started = Self { server, bin, folder };
        started.wait();
        started
    }

    /// Its folder.
    pub fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// Where a database of it is, over a port that may be another's.
    pub fn address(database: &str, port: u16) -> String {
        format!("postgres://office@127.0.0.1:{port}/{database}")
    }

    /// Waits until it answers: a port is open before that.
    pub fn wait(&self) {
        for _ in 0..300 {
            if self.psql("postgres", "SELECT 1").is_ok() {
                return;
            }
            std::thread::sleep(std::time::Duration::from_millis(100));
        }
        panic!("PostgreSQL does not answer");
    }

    /// A new database.
    pub fn database(&self, name: &str) {
        self.psql("postgres", &format!("CREATE DATABASE {name}")).expect("made");
    }

    /// What a planner's own tool gets.
    pub fn ask(&self, database: &str, sql: &str) -> String {
        self.psql(database, sql).expect(sql)
    }

    fn psql(&self, database: &str, sql: &str) -> Result<String, String> {
        let mut command = Command::new(self.bin.join("psql"));
        command.args(["-X", "-q", "-A", "-t", "-v", "ON_ERROR_STOP=1", "-d"]);
        command.arg(Self::address(database, self.server.port)).args(["-c", sql]).env("PGPASSWORD", PASSWORD);
        let output = command.output().expect("psql runs");
        let text = |bytes| String::from_utf8_lossy(bytes).trim_end().to_owned();
        if output.status.success() { Ok(text(&output.stdout)) } else { Err(text(&output.stderr)) }
    }

    /// Every row of every table of the copy, but for when it was made.
    pub fn dump(&self, database: &str) -> String {
        let tables = self.ask(
            database,
            "SELECT tablename FROM pg_tables WHERE schemaname = 'hosewright' AND tablename <> 'copied' ORDER BY 1",
        );
        let rows = tables.lines().map(|table| {
            let rows = self
                .ask(database, &format!("SELECT whole::text FROM hosewright.{table} AS whole ORDER BY 1"));
            format!("{table}\n{rows}\n")
        });
        rows.collect()
    }
}

/// The programs of the newest version that is installed.
fn newest() -> PathBuf {
    let versions = std::fs::read_dir("/usr/lib/postgresql").expect("PostgreSQL; tests/vans/run installs it");
    let versions = versions.filter_map(|version| version.ok()?.file_name().to_str()?.parse::<u32>().ok());
    let newest = versions.max().expect("a version");
    PathBuf::from(format!("/usr/lib/postgresql/{newest}/bin"))
}

fn is_root() -> bool {
    id(&["-u"]) == 0
}

fn user_of_package() -> (u32, u32) {
    (id(&["-u", "postgres"]), id(&["-g", "postgres"]))
}

fn id(asked: &[&str]) -> u32 {
    let output = Command::new("id").args(asked).output().expect("id runs");
    String::from_utf8_lossy(&output.stdout).trim().parse().expect("a number")
}

fn as_user(program: &Path, user: Option<(u32, u32)>) -> Command {
    let Some((user, group)) = user else { return Command::new(program) };
    let mut command = Command::new("setpriv");
    command.args([&format!("--reuid={user}"), &format!("--regid={group}"), "--clear-groups"]).arg(program);
    command
}

fn walk(folder: &Path) -> Vec<PathBuf> {
    let mut files = vec![folder.to_owned()];
    files.extend(
        super::super::list(folder).into_iter().flat_map(
            |path| {
                if path.is_dir() { walk(&path) } else { vec![path] }
            },
        ),
    );
    files
}
