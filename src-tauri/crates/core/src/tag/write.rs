//! A tag's content as text.

use super::name::{COVERS, DUTIES, GENDERS, LINES, form, name, word, word_of};
use super::seal::KEY;
use super::sum::sum;
use super::{GRAMMAR, Proof, TagContent, TagSeal};
use crate::fleet::FleetKey;
use crate::quantity::Bar;
use crate::spec::{Adapter, EndSpec, HoseRef, Role, Side};

/// What the sides of an adapter begin with.
pub(super) const HOSE_SIDE: &str = "hose side ";
pub(super) const MACHINE_SIDE: &str = "machine side ";

/// The text that stands in the QR code, by the grammar of this [module](super).
pub fn write(tag: &TagContent) -> String {
    write_as(GRAMMAR, tag)
}

/// Puts a fleet's seal on a tag, in the place of any it had.
pub fn seal(tag: &mut TagContent, key: &FleetKey) {
    tag.seal = Some(TagSeal::of(key, &facts(GRAMMAR, tag)));
}

/// The text as a version of the grammar has it: an older tag is held against its own writing.
pub(super) fn write_as(version: u32, tag: &TagContent) -> String {
    let facts = facts(version, tag);
    let body = match &tag.seal {
        Some(seal) if version >= 3 => format!("{facts}\n{KEY}{seal}"),
        _ => facts,
    };
    format!("{body}\nSUM {}", sum(&body))
}

/// All lines above seal and checksum: what a seal is set on.
fn facts(version: u32, tag: &TagContent) -> String {
    let mut lines = vec![format!("HOSE TAG {version} {}", tag.code)];
    lines.extend(tag.spec.hose.as_ref().map(|of| hose(version, of)));
    lines.extend(tag.spec.ends.iter().map(end));
    lines.extend(tag.spec.adapters.iter().map(|one| adapter(version, one)));
    lines.extend(tag.spec.overall_length_mm.map(|length| format!("LENGTH {} mm", length.0)));
    lines.extend(tag.spec.turn_deg.map(|turn| format!("TURN {} deg", turn.0)));
    lines.extend(tag.spec.cover.map(|cover| format!("COVER {}", word_of(&COVERS, &cover))));
    lines.extend(tag.pressure_bar.map(|pressure| format!("MAX {}", both_units(version, pressure))));
    lines.extend(tag.line.map(|line| format!("LINE {}", word_of(&LINES, &line))));
    lines.extend(tag.fluid.as_deref().map(|fluid| format!("FLUID {}", name(fluid))));
    if !tag.duties.is_empty() {
        let duties: Vec<_> = tag.duties.iter().map(|duty| word_of(&DUTIES, duty)).collect();
        lines.push(format!("DUTY {}", duties.join(" ")));
    }
    lines.extend(tag.assembled.map(|made| format!("MADE {made}")));
    lines.push(match tag.proof {
        Proof::Proved { pressure_bar } => format!("PROVED {}", exact(pressure_bar)),
        Proof::NotProved => "NOT PROVED".to_owned(),
        Proof::NoRig => "NOT PROVED: NO RIG".to_owned(),
    });
    lines.push(format!("CATALOGUE {}", name(&tag.catalogue)));
    lines.join("\n")
}

fn hose(version: u32, hose: &HoseRef) -> String {
    let mut parts = vec![format!("HOSE {} {} DN{}", name(&hose.standard), word(&hose.kind), hose.dn)];
    if version >= 2 {
        parts.extend(hose.min_bend_radius_mm.map(|radius| format!("bend {} mm", radius.0)));
        parts.extend(hose.vacuum_kpa_abs.map(|lowest| format!("vacuum {lowest} kPa")));
    }
    parts.join(", ")
}

fn end(end: &EndSpec) -> String {
    let mut parts = vec![format!("{} {} {}", role(end.role), name(&end.family), word(&end.size))];
    parts.extend(end.gender.map(|gender| word_of(&GENDERS, &gender).to_owned()));
    parts.extend(end.form.as_deref().map(form));
    parts.extend(end.drop_mm.map(|drop| format!("drop {} mm", drop.0)));
    parts.extend(end.cutoff_mm.map(|cutoff| format!("cut-off {} mm", cutoff.0)));
    parts.extend(end.rating_bar.map(|rating| format!("rated {}", exact(rating))));
    parts.join(", ")
}

fn adapter(version: u32, adapter: &Adapter) -> String {
    let mut parts = vec![format!("ADAPTER {}", name(&adapter.name))];
    parts.extend(adapter.rating_bar.map(|rating| format!("rated {}", exact(rating))));
    if let Some(between) = adapter.between.as_ref().filter(|_| version >= 3) {
        parts.push(format!("at {}", role(between.role)));
        parts.push(side(HOSE_SIDE, &between.hose_side));
        parts.push(side(MACHINE_SIDE, &between.machine_side));
    }
    parts.join(", ")
}

fn side(which: &str, side: &Side) -> String {
    let gender = side.gender.map_or(String::new(), |gender| format!(", {}", word_of(&GENDERS, &gender)));
    format!("{which}{} {}{gender}", name(&side.family), word(&side.size))
}

fn role(role: Role) -> &'static str {
    match role {
        Role::A => "A",
        Role::B => "B",
    }
}

/// Whole psi, where that is how the pressure was given and bar would be a long fraction.
fn whole_psi(pressure: Bar) -> Option<f64> {
    let psi = pressure.psi().round();
    let short_in_bar = (pressure.0 * 10.0).round() / 10.0 == pressure.0;
    (!short_in_bar && psi * Bar::PER_PSI == pressure.0).then_some(psi)
}

/// The pressure in the unit that writes it exactly.
fn exact(pressure: Bar) -> String {
    match whole_psi(pressure) {
        Some(psi) => format!("{psi} psi"),
        None => format!("{} bar", pressure.0),
    }
}

/// The exact writing and the other unit beside it, psi as the trade prints it; version 1 converted every figure.
fn both_units(version: u32, pressure: Bar) -> String {
    let beside = match (whole_psi(pressure), version) {
        (Some(_), _) => format!("{} bar", pressure.0.round()),
        (None, 1) => format!("{} psi", pressure.rounded_psi()),
        (None, _) => format!("{} psi", pressure.printed_psi()),
    };
    format!("{} ({beside})", exact(pressure))
}

#[cfg(test)]
mod tests {
    use super::super::example;
    use super::*;

    #[test]
    fn a_tag_reads_like_words() {
        let text = write(&example::full());
        let (body, last) = text.rsplit_once('\n').unwrap();
        let code = example::full().code;
        assert_eq!(
            body,
            format!(
                "HOSE TAG 3 {code}\nHOSE EN 853 2SN DN16, bend 130 mm, vacuum 20 kPa\nA JIC 37 flare -10, female, elbow90, drop 55 mm, cut-off 32.5 mm, rated 350 bar\nB flange 62 -12, straight\nADAPTER test point, rated 400 bar, at A, hose side JIC 37 flare -10, male, machine side ORFS -10, male\nLENGTH 1240 mm\nTURN 90 deg\nCOVER non-conductive\nMAX 276 bar (4000 psi)\nLINE case-drain\nFLUID HM\nDUTY non-conductive antistatic\nMADE 2026-11\nPROVED 552 bar\nCATALOGUE 5f0c1d2e"
            )
        );
        assert_eq!(last, format!("SUM {}", sum(body)));
    }

    #[test]
    fn a_pressure_is_written_in_the_unit_it_was_given_in() {
        let given = |text: &str| both_units(GRAMMAR, text.parse().unwrap());
        assert_eq!(given("3000 psi"), "3000 psi (207 bar)");
        assert_eq!(given("276"), "276 bar (4000 psi)");
        assert_eq!(given("27.6 MPa"), "276 bar (4000 psi)");
        assert_eq!(given("206"), "206 bar (3000 psi)");
        assert_eq!(given("10.5 bar"), "10.5 bar (152 psi)");
    }
}
