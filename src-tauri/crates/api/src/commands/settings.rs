//! `settings`: how this device shows, prints and measures. They stay on it: never merged, never in a bundle.

use super::Nothing;
use super::make::PaperSize;
use crate::{Answer, Api, ApiError};
use hosewright_core::catalogue::LengthPractice;
use hosewright_core::find::CALIPER_ERROR;
use hosewright_core::press::PressCare;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::PersonId;
use hosewright_core::stock::money::{MoneyError, digits, parse, written};
use hosewright_core::tag::LabelStock;
use hosewright_words::{Language, Words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use ts_rs::TS;

/// Settings of this device. What is left out is as it was on the first day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Settings {
    /// The language that everything is said and written in; none is that of the device.
    pub language: Option<LanguageTag>,
    /// The unit that lengths are written in first.
    pub length_unit: LengthUnit,
    /// The unit that pressures are written in first.
    pub pressure_unit: PressureUnit,
    /// The paper in the printer.
    pub paper: PaperSize,
    /// The labels there are, 1 to 30, each with a name of its own; the first is offered first.
    pub label_stocks: Vec<LabelStock>,
    /// Whose tolerances lengths are held to.
    pub length_practice: LengthPractice,
    /// Standard error of the caliper.
    pub caliper_error_mm: Millimetres,
    /// Standard error of the tape.
    pub tape_error_mm: Millimetres,
    /// Standard error of the micrometer.
    pub micrometer_error_mm: Millimetres,
    /// What the saw takes of a hose; none is not known.
    pub kerf_mm: Option<Millimetres>,
    /// How many months a calibration of the proof gauge holds.
    pub gauge_months: u32,
    /// What is done at the press, and how often.
    pub press_care: Vec<PressCare>,
    /// The van or shelf that this device works from; blank is not said.
    pub store: String,
    /// From which length a rest of hose is kept; none keeps every rest.
    pub offcut_mm: Option<Millimetres>,
    /// Prices, tax and labour.
    pub pricing: Pricing,
    /// The instruments in use.
    pub instruments: Instruments,
    /// Who is working; none when nobody said so, or when the name was erased.
    pub person: Option<PersonId>,
}

/// How a job is priced; all of it the user's own.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Pricing {
    /// The currency by its letters, such as `EUR`; blank is not said, and nothing is priced then.
    pub currency: String,
    /// Tax in hundredths of a percent: 1900 is 19 %. None is not said; no tax is 0.
    pub tax_hundredths: Option<u32>,
    /// What an hour costs, as it is typed, such as `72.50`; none is not priced.
    pub labour_rate: Option<String>,
    /// How long each part of the work takes.
    pub labour: Vec<Labour>,
}

/// A part of the work and its time.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Labour {
    /// What is done, such as `crimp and prove` or `travel`.
    pub name: String,
    /// What it is done for.
    pub per: LabourPer,
    /// Minutes.
    pub minutes: u32,
}

/// What a part of the work is done for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabourPer {
    /// For each hose.
    Hose,
    /// Once for the job.
    Job,
}

/// Names or numbers of the instruments in use, as they stand on them; blank where there is none.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct Instruments {
    /// The caliper.
    pub caliper: String,
    /// The thread gauge.
    pub thread_gauge: String,
    /// The seat gauge.
    pub seat_gauge: String,
    /// The tape.
    pub tape: String,
    /// The micrometer.
    pub micrometer: String,
}

/// A language that there are words in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LanguageTag {
    /// English.
    En,
    /// German.
    De,
    /// Spanish.
    Es,
}

impl From<LanguageTag> for Language {
    fn from(tag: LanguageTag) -> Self {
        match tag {
            LanguageTag::En => Language::English,
            LanguageTag::De => Language::German,
            LanguageTag::Es => Language::Spanish,
        }
    }
}

/// Units of length.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LengthUnit {
    /// Millimetres.
    Mm,
    /// Inches.
    Inch,
}

/// Units of pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PressureUnit {
    /// Bar.
    Bar,
    /// Pounds on a square inch.
    Psi,
}

/// Standard error of a micrometer that reads to a hundredth of a millimetre: common practice.
const MICROMETER_ERROR: Millimetres = Millimetres(0.01);

/// Months between calibrations of a pressure gauge: common practice.
const GAUGE_MONTHS: u32 = 12;

/// Standard error of a tape read to the millimetre along a hose: common practice.
const TAPE_ERROR: Millimetres = Millimetres(1.0);

impl Default for Settings {
    fn default() -> Self {
        Self {
            language: None,
            length_unit: LengthUnit::Mm,
            pressure_unit: PressureUnit::Bar,
            paper: PaperSize::A4,
            label_stocks: vec![LabelStock::default()],
            length_practice: LengthPractice::default(),
            caliper_error_mm: CALIPER_ERROR,
            tape_error_mm: TAPE_ERROR,
            micrometer_error_mm: MICROMETER_ERROR,
            kerf_mm: None,
            gauge_months: GAUGE_MONTHS,
            press_care: Vec::new(),
            store: String::new(),
            offcut_mm: None,
            pricing: Pricing::default(),
            instruments: Instruments::default(),
            person: None,
        }
    }
}

/// Longest name of an instrument, in characters.
const LONGEST_NAME: usize = 60;

impl Settings {
    /// With one of them changed; none where it can not be that. A key that there is none of changes nothing.
    fn with(&self, key: &str, value: Value) -> Option<Self> {
        let mut document = serde_json::to_value(self).ok()?;
        if let Some(setting) = document.get_mut(key) {
            *setting = value;
        }
        let changed: Self = serde_json::from_value(document).ok()?;
        changed.validate().is_ok().then_some(changed)
    }

    fn validate(&self) -> Result<(), ApiError> {
        let numbers = [
            ("caliper_error_mm", self.caliper_error_mm.get(), 0.001, 5.0),
            ("tape_error_mm", self.tape_error_mm.get(), 0.001, 100.0),
            ("micrometer_error_mm", self.micrometer_error_mm.get(), 0.0001, 5.0),
            ("kerf_mm", self.kerf_mm.map_or(0.0, Millimetres::get), 0.0, 20.0),
            ("gauge_months", f64::from(self.gauge_months), 1.0, 120.0),
            ("offcut_mm", self.offcut_mm.map_or(0.0, Millimetres::get), 0.0, 100_000.0),
        ];
        for (field, value, least, most) in numbers {
            if !(least..=most).contains(&value) {
                return Err(ApiError::input(
                    field,
                    format!("{value} can not be; it lies between {least} and {most}"),
                ));
            }
        }
        care(&self.press_care)?;
        self.pricing.validate()?;
        stocks(&self.label_stocks)?;
        let Instruments { caliper, thread_gauge, seat_gauge, tape, micrometer } = &self.instruments;
        let names = [
            ("store", &self.store),
            ("instruments.caliper", caliper),
            ("instruments.thread_gauge", thread_gauge),
            ("instruments.seat_gauge", seat_gauge),
            ("instruments.tape", tape),
            ("instruments.micrometer", micrometer),
        ];
        match names.into_iter().find(|(_, name)| name.chars().count() > LONGEST_NAME) {
            Some((field, _)) => Err(ApiError::input(
                field,
                format!("the name is too long; keep it to {LONGEST_NAME} characters"),
            )),
            None => Ok(()),
        }
    }
}

/// Most parts of the work that have a time.
const MOST_LABOURS: usize = 50;

/// Longest time of a part of the work, in minutes: a day.
const MOST_MINUTES: u32 = 24 * 60;

impl Pricing {
    /// What an hour costs in the currency's smallest unit; none is not priced.
    ///
    /// # Errors
    /// What was typed is no amount of the currency.
    pub(super) fn hour(&self) -> Result<Option<i64>, MoneyError> {
        self.labour_rate.as_deref().map(|rate| parse(rate, digits(&self.currency))).transpose()
    }

    fn validate(&self) -> Result<(), ApiError> {
        let refused = |field: &str, why: String| Err(ApiError::input(format!("pricing.{field}"), why));
        let letters = self.currency.as_bytes();
        if !letters.is_empty() && (letters.len() != 3 || !letters.iter().all(u8::is_ascii_uppercase)) {
            return refused("currency", "three capital letters are expected, such as EUR (ISO 4217)".into());
        }
        if self.tax_hundredths.is_some_and(|tax| tax > 10_000) {
            return refused(
                "tax_hundredths",
                "hundredths of a percent up to 10000 are expected: 1900 is 19 %".into(),
            );
        }
        if let Err(error) = self.hour() {
            return refused("labour_rate", error.to_string());
        }
        if self.labour.len() > MOST_LABOURS {
            return refused("labour", format!("{MOST_LABOURS} at most are kept"));
        }
        let wrong = |labour: &&Labour| {
            labour.name.trim().is_empty()
                || labour.name.chars().count() > LONGEST_NAME
                || labour.minutes > MOST_MINUTES
        };
        match self.labour.iter().find(wrong) {
            Some(labour) => refused(
                "labour",
                format!(
                    "\"{}\": a name of at most {LONGEST_NAME} characters and at most {MOST_MINUTES} minutes are expected",
                    labour.name
                ),
            ),
            None => Ok(()),
        }
    }
}

/// Most stocks of labels.
const MOST_STOCKS: usize = 30;

fn stocks(stocks: &[LabelStock]) -> Result<(), ApiError> {
    const FIELD: &str = "label_stocks";
    if stocks.is_empty() || stocks.len() > MOST_STOCKS {
        return Err(ApiError::input(FIELD, format!("1 to {MOST_STOCKS} label stocks are kept")));
    }
    for (at, stock) in stocks.iter().enumerate() {
        stock.plausible().map_err(|error| ApiError::input(format!("{FIELD}[{at}]"), error))?;
        if stocks[..at].iter().any(|other| other.name.trim() == stock.name.trim()) {
            let why = format!("there are two label stocks called \"{}\"; give one another name", stock.name);
            return Err(ApiError::input(format!("{FIELD}[{at}].name"), why));
        }
    }
    Ok(())
}

/// Most things that are done at a press.
const MOST_CARES: usize = 50;

fn care(cares: &[PressCare]) -> Result<(), ApiError> {
    if cares.len() > MOST_CARES {
        return Err(ApiError::input("press_care", format!("{MOST_CARES} at most are kept")));
    }
    for care in cares {
        care.plausible().map_err(|error| ApiError::input("press_care", error))?;
    }
    Ok(())
}

/// Settings of this device as they were kept.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct SettingsRead {
    /// What holds.
    #[serde(flatten)]
    pub settings: Settings,
    /// The names of those that were kept and can not be read: what stands on the first day holds for them.
    pub unreadable: Vec<String>,
}

/// Settings of this device.
///
/// # Errors
/// The register can not be read.
pub fn read(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<SettingsRead>, ApiError> {
    let mut read = kept(api)?;
    if let Some(person) = read.settings.person
        && !is_known(api, person)?
    {
        read.settings.person = None;
    }
    Ok(api.answer(read))
}

impl Api {
    /// What holds on this device; what stands on the first day where no register is open.
    pub(super) fn settings(&mut self) -> Result<Settings, ApiError> {
        if self.register.is_none() {
            return Ok(Settings::default());
        }
        Ok(kept(self)?.settings)
    }

    /// Takes the words of the language that the settings name, where they are followed. Settings that can not be read
    /// change nothing: whoever asks for them is told why.
    pub(crate) fn speak(&mut self) {
        if !self.speaks_as_set {
            return;
        }
        let Ok(settings) = self.settings() else { return };
        let language = settings.language.map_or(Language::English, Language::from);
        if self.words.language() != language {
            self.words = Words::of(language);
        }
    }
}

/// What was kept, over what stands on the first day. A key of another version says nothing here; a value that can not
/// be, whoever wrote it, hides no other.
fn kept(api: &mut Api) -> Result<SettingsRead, ApiError> {
    let kept = api.register()?.settings()?;
    let mut settings = Settings::default();
    let mut unreadable = kept.unreadable;
    for (key, value) in kept.read {
        match settings.with(&key, value) {
            Some(changed) => settings = changed,
            None => unreadable.push(key),
        }
    }
    Ok(SettingsRead { settings, unreadable })
}

fn is_known(api: &mut Api, person: PersonId) -> Result<bool, ApiError> {
    Ok(api.register()?.people()?.iter().any(|known| known.id == person))
}

/// Keeps settings, all of them. What is answered is on the disk.
///
/// # Errors
/// A number that can not be, a name that is too long, a person who has no name here; a register that
/// can not be written.
pub fn write(api: &mut Api, mut asked: Settings, _: &[u8]) -> Result<Answer<Settings>, ApiError> {
    asked.validate()?;
    // With all decimals of its currency.
    asked.pricing.labour_rate =
        asked.pricing.hour()?.map(|hour| written(hour, digits(&asked.pricing.currency)));
    if let Some(person) = asked.person
        && !is_known(api, person)?
    {
        return Err(ApiError::input("person", "nobody here has that id; add the person's name first"));
    }
    let settings = serde_json::to_value(&asked)
        .and_then(serde_json::from_value)
        .map_err(|error| ApiError::input("", error))?;
    api.register()?.keep_settings(&settings)?;
    api.speak();
    Ok(api.answer(asked))
}
