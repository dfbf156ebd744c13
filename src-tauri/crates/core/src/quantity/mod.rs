//! Quantities as newtypes, so a bar can not be passed for a millimetre, and the one place where
//! the trade's writing of them (`13/16 in`, `1 1/16"`, `20,6 mm`, `3000 psi`, `-40 F`) is read.

mod parse;

pub use parse::{QuantityError, parse_length};

use schemars::JsonSchema;
use serde::de::Visitor;
use serde::{Deserialize, Deserializer, Serialize};
use std::str::FromStr;
use ts_rs::TS;

/// A number or the trade's writing of it, as it comes from outside.
enum NumberOrText {
    Number(f64),
    Text(String),
}

impl NumberOrText {
    /// Reads either. `expected` completes the message where it is neither; a missing field keeps
    /// serde's own message, which names it.
    fn read<'de, D: Deserializer<'de>>(from: D, expected: &'static str) -> Result<Self, D::Error> {
        struct Expected(&'static str);
        impl Visitor<'_> for Expected {
            type Value = NumberOrText;
            fn expecting(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                to.write_str(self.0)
            }
            fn visit_f64<E>(self, number: f64) -> Result<NumberOrText, E> {
                Ok(NumberOrText::Number(number))
            }
            fn visit_u64<E>(self, number: u64) -> Result<NumberOrText, E> {
                Ok(NumberOrText::Number(number as f64))
            }
            fn visit_i64<E>(self, number: i64) -> Result<NumberOrText, E> {
                Ok(NumberOrText::Number(number as f64))
            }
            fn visit_str<E>(self, text: &str) -> Result<NumberOrText, E> {
                Ok(NumberOrText::Text(text.to_owned()))
            }
        }
        from.deserialize_any(Expected(expected))
    }
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $unit:literal, $parse:path, $example:literal) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, TS)]
        #[ts(as = "f64")]
        pub struct $name(pub f64);

        impl $name {
            /// The unit's symbol.
            pub const UNIT: &'static str = $unit;

            /// The bare number in the unit of the type.
            pub const fn get(self) -> f64 {
                self.0
            }
        }

        impl FromStr for $name {
            type Err = QuantityError;
            fn from_str(text: &str) -> Result<Self, QuantityError> {
                $parse(text).map($name)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                match NumberOrText::read(from, concat!("a number in ", $unit, " or a text such as \"", $example, "\""))? {
                    NumberOrText::Number(number) => Ok($name(number)),
                    NumberOrText::Text(text) => text.parse().map_err(serde::de::Error::custom),
                }
            }
        }

        impl JsonSchema for $name {
            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($name).into()
            }
            fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
                schemars::json_schema!({
                    "description": concat!("A number in ", $unit, ", or a text such as \"", $example, "\"."),
                    "type": ["number", "string"]
                })
            }
        }
    };
}

quantity!(
    /// A length in millimetres.
    Millimetres, "mm", parse::length, "13/16 in"
);
quantity!(
    /// A length in metres, for lines: a text with no unit is metres too.
    Metres, "m", parse::metres, "10 ft"
);
quantity!(
    /// A pressure in bar (gauge, unless the field's name says `abs`).
    Bar, "bar", parse::pressure, "3000 psi"
);
quantity!(
    /// A temperature in degrees Celsius.
    Celsius, "C", parse::temperature, "212 F"
);
quantity!(
    /// An angle in degrees. Seats are given by their included angle (37 degree flare = 74).
    Degrees, "deg", parse::angle, "74"
);
quantity!(
    /// A volume flow in litres a minute.
    LitresPerMinute, "l/min", parse::flow, "20 gpm"
);

impl Millimetres {
    /// One inch, exactly (international yard and pound agreement, 1959).
    pub const PER_INCH: f64 = 25.4;

    /// A length given in inches.
    pub fn from_inches(inches: f64) -> Self {
        Self(inches * Self::PER_INCH)
    }
}

impl Bar {
    /// Bar in one pound-force a square inch (NIST SP 811, appendix B).
    pub const PER_PSI: f64 = 0.068_947_572_931_683_6;

    /// The same pressure in psi.
    pub fn psi(self) -> f64 {
        self.0 / Self::PER_PSI
    }

    /// The same pressure in psi, as the trade prints it beside bar.
    ///
    /// Ratings are set in steps of 500 psi and printed in whole bar, rounded (3000 psi: 207 bar) or cut off
    /// (206 bar, from 20.6 MPa); 500 psi also as 35 bar, from 3.5 MPa (common practice: the tables of ends and
    /// flanges hold 35, 103, 137, 172, 206, 275, 310, 344 and 413 bar for such steps). So a figure from the step
    /// cut off to whole bar up to half a bar above the step gives the step. Every other figure is converted, and
    /// rounded to 10 psi from 1000 psi up, to 1 psi below.
    pub fn printed_psi(self) -> f64 {
        const STEP: f64 = 500.0;
        let step = (self.psi() / STEP).round() * STEP;
        let step_bar = step * Self::PER_PSI;
        let printed =
            (step_bar.floor()..=step_bar + 0.5).contains(&self.0) || (self.0 == 35.0 && step == STEP);
        if step > 0.0 && printed { step } else { self.rounded_psi() }
    }

    /// The same pressure in psi, rounded to 10 from 1000 up and to 1 below.
    pub(crate) fn rounded_psi(self) -> f64 {
        let step = if self.psi() >= 1000.0 { 10.0 } else { 1.0 };
        (self.psi() / step).round() * step
    }
}

/// A reading of a length: the value and, where known, its standard error.
///
/// On input a number, the trade's writing, or `{"value":..,"error":..}`. Writing in fractions of an
/// inch carries half its step as error: `13/16 in` is 20.6375 mm with an error of 1/32 in.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, TS)]
#[ts(type = "number | string | { value: number | string, error?: number | string }")]
pub struct Reading {
    /// What was read.
    pub value: Millimetres,
    /// Its standard error, where the way it was written or the person gave one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub error: Option<Millimetres>,
}

impl Reading {
    /// A reading with no error of its own: the instrument's stands for it.
    pub fn of(value: f64) -> Self {
        Self { value: Millimetres(value), error: None }
    }
}

impl FromStr for Reading {
    type Err = QuantityError;
    fn from_str(text: &str) -> Result<Self, QuantityError> {
        let (value, step) = parse_length(text)?;
        Ok(Self { value: Millimetres(value), error: step.map(|step| Millimetres(step / 2.0)) })
    }
}

impl<'de> Deserialize<'de> for Reading {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct WithError {
            value: Millimetres,
            error: Option<Millimetres>,
        }
        #[derive(Deserialize)]
        #[serde(untagged)]
        enum Form {
            Number(f64),
            Text(String),
            WithError(WithError),
        }
        let form = Form::deserialize(from).map_err(|_| {
            serde::de::Error::custom(
                "a number in mm, a text such as \"13/16 in\", or {\"value\":..,\"error\":..} is expected",
            )
        })?;
        match form {
            Form::Number(number) => Ok(Reading::of(number)),
            Form::Text(text) => text.parse().map_err(serde::de::Error::custom),
            Form::WithError(read) => Ok(Reading { value: read.value, error: read.error }),
        }
    }
}

impl JsonSchema for Reading {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Reading".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "description": "A number in mm, a text such as \"13/16 in\" (half its step is its error), or value and error.",
            "anyOf": [
                {"type": ["number", "string"]},
                {
                    "type": "object",
                    "properties": {
                        "value": {"type": ["number", "string"]},
                        "error": {"type": ["number", "string", "null"]}
                    },
                    "required": ["value"],
                    "additionalProperties": false
                }
            ]
        })
    }
}

/// A nominal diameter (DN), the size number of a hose: 12 for the half-inch hose, 6.3 in the
/// series that print fractions. Kept in tenths so that sizes compare exactly.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, TS)]
#[ts(as = "f64")]
pub struct Dn(u16);

impl Dn {
    /// From the number as written; `None` when it is no plausible size (0 < DN <= 1000).
    pub fn new(number: f64) -> Option<Self> {
        let tenths = (number * 10.0).round();
        (1.0..=10_000.0).contains(&tenths).then_some(Self(tenths as u16))
    }

    /// The number as written.
    pub fn get(self) -> f64 {
        f64::from(self.0) / 10.0
    }
}

impl std::fmt::Display for Dn {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if self.0.is_multiple_of(10) {
            write!(to, "{}", self.0 / 10)
        } else {
            write!(to, "{}.{}", self.0 / 10, self.0 % 10)
        }
    }
}

impl FromStr for Dn {
    type Err = QuantityError;
    fn from_str(text: &str) -> Result<Self, QuantityError> {
        let digits = text.trim().trim_start_matches("DN").trim().replace(',', ".");
        digits.parse().ok().and_then(Self::new).ok_or_else(|| QuantityError::Size { text: text.to_owned() })
    }
}

impl Serialize for Dn {
    fn serialize<S: serde::Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        if self.0.is_multiple_of(10) { to.serialize_u16(self.0 / 10) } else { to.serialize_f64(self.get()) }
    }
}

impl<'de> Deserialize<'de> for Dn {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let number = match NumberOrText::read(from, "a nominal diameter such as 12 or 6.3")? {
            NumberOrText::Number(number) => Self::new(number),
            NumberOrText::Text(text) => text.parse().ok(),
        };
        number.ok_or_else(|| serde::de::Error::custom("a nominal diameter such as 12 or 6.3 is expected"))
    }
}

impl JsonSchema for Dn {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Dn".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({"description": "Nominal diameter of a hose, such as 12.", "type": "number"})
    }
}

#[cfg(test)]
mod tests {
    use super::Bar;

    /// Steps of 500 psi as ratings print them in bar (common practice; NIST SP 811 for all others).
    #[test]
    fn psi_beside_bar_is_what_the_trade_prints() {
        let steps = [
            (35.0, 500.0),
            (69.0, 1000.0),
            (103.0, 1500.0),
            (137.0, 2000.0),
            (138.0, 2000.0),
            (172.0, 2500.0),
            (206.0, 3000.0),
            (206.84, 3000.0),
            (207.0, 3000.0),
            (241.0, 3500.0),
            (275.0, 4000.0),
            (276.0, 4000.0),
            (310.0, 4500.0),
            (344.0, 5000.0),
            (345.0, 5000.0),
            (413.0, 6000.0),
            (414.0, 6000.0),
        ];
        let converted = [
            (0.0, 0.0),
            (0.3, 4.0),
            (5.0, 73.0),
            (36.0, 522.0),
            (104.0, 1510.0),
            (205.0, 2970.0),
            (208.0, 3020.0),
            (210.0, 3050.0),
            (250.0, 3630.0),
            (350.0, 5080.0),
            (420.0, 6090.0),
        ];
        for (bar, right) in steps.into_iter().chain(converted) {
            assert_eq!(Bar(bar).printed_psi(), right, "{bar} bar");
        }
    }
}
