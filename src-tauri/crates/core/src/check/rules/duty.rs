//! Duties of the place that the hose must keep: non-conductive, flame-resistant, antistatic.

use crate::catalogue::Reinforcement;
use crate::check::subject::Subject;
use crate::check::{Finding, Verdict, cases};
use crate::spec::{Cover, Duty};

const RULE: &str = "duty";

pub(super) fn duties(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(hose) = subject.hose else { return Vec::new() };
    subject.service.duties.iter().map(|duty| kept(subject, *duty, hose.kind.reinforcement)).collect()
}

fn kept(subject: &Subject<'_>, duty: Duty, reinforcement: Option<Reinforcement>) -> Finding {
    let (verdict, case) = if duty == Duty::NonConductive && !free_of_wire(reinforcement) {
        (Verdict::Stop, cases::DUTY_WIRE_CONDUCTS)
    } else if subject.spec.cover != Some(cover_for(duty)) {
        (Verdict::Stop, cases::DUTY_COVER_MISSING)
    } else {
        (Verdict::Pass, cases::DUTY_OK)
    };
    let (name, caution) = match duty {
        Duty::NonConductive => ("non-conductive", "C27"),
        Duty::FlameResistant => ("flame-resistant", "C28"),
        Duty::Antistatic => ("antistatic", "C28"),
    };
    Finding::new(RULE, verdict, case).about("duty", name).from(&subject.caution(caution))
}

/// What is not known to be free of wire may lead the current.
fn free_of_wire(reinforcement: Option<Reinforcement>) -> bool {
    match reinforcement {
        Some(Reinforcement::TextileBraid | Reinforcement::ThermoplasticTextile) => true,
        Some(
            Reinforcement::WireBraid
            | Reinforcement::WireSpiral
            | Reinforcement::PtfeSteelBraid
            | Reinforcement::SuctionHelix,
        )
        | None => false,
    }
}

fn cover_for(duty: Duty) -> Cover {
    match duty {
        Duty::NonConductive => Cover::NonConductive,
        Duty::FlameResistant => Cover::FlameResistant,
        Duty::Antistatic => Cover::Antistatic,
    }
}
