//! `cut` in plain text: what is cut from each reel and offcut.

use super::Plain;
use super::text::wrapped;
use hosewright_api::Answer;
use hosewright_core::cutting::{Batch, CutPlan, StockSort};
use hosewright_core::quantity::Millimetres;
use hosewright_words::{Say, Words, number};
use serde::Serialize;

/// A plan and the batch that it is for.
#[derive(Debug, Serialize)]
#[serde(transparent)]
pub struct CutShown {
    /// The answer.
    pub plan: Answer<CutPlan>,
    /// The question: the plan names pieces and stocks by their place in it.
    #[serde(skip)]
    pub batch: Batch,
}

impl CutShown {
    fn pieces(&self, places: &[usize]) -> String {
        let lengths = places.iter().filter_map(|place| self.batch.pieces_mm.get(*place));
        lengths.map(|length| mm(*length)).collect::<Vec<_>>().join(" + ")
    }
}

impl Plain for CutShown {
    fn plain(&self, words: &Words) -> String {
        let plan = &self.plan.content;
        let mut lines = Vec::new();
        for cut in &plan.cuts {
            let Some(stock) = self.batch.stock.get(cut.stock) else { continue };
            let sort = match stock.sort {
                StockSort::Reel => "reel",
                StockSort::Offcut => "offcut",
            };
            let key = format!("cut-{sort}-{}", if cut.kept { "kept" } else { "scrap" });
            let names: [(&str, &dyn Say); 4] = [
                ("place", &(cut.stock + 1)),
                ("length", &mm(stock.length_mm)),
                ("pieces", &self.pieces(&cut.pieces)),
                ("left", &mm(cut.left_mm)),
            ];
            lines.push(wrapped(&words.say(&key, &names), 2));
        }
        if !plan.unmade.is_empty() {
            lines.push(wrapped(&words.say("cut-unmade", &[("pieces", &self.pieces(&plan.unmade))]), 2));
        }
        let proved = if plan.proved { "cut-sum-proved" } else { "cut-sum" };
        let sum: [(&str, &dyn Say); 3] =
            [("reel", &mm(plan.reel_mm)), ("scrap", &mm(plan.scrap_mm)), ("least", &mm(plan.least_reel_mm))];
        lines.push(wrapped(&words.say(proved, &sum), 0));
        lines.join("\n")
    }
}

fn mm(length: Millimetres) -> String {
    number(length.get(), 1)
}
