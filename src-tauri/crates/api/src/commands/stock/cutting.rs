//! What of one hose is cut from which piece of a store.

use super::line::NeedLine;
use super::names::{hose_name, mm, tenths};
use super::said::{Said, SaidCode};
use super::shelf::Shelf;
use crate::{Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::catalogue::AgeOf;
use hosewright_core::cutting::{self, Batch, CutPlan, StockSort};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{Piece, PieceId, StockUnit};
use hosewright_core::stock::{Stands, StockKind, Thing};
use hosewright_store::PieceKept;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A piece that is cut from.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutFrom {
    /// Which.
    pub piece: PieceId,
    /// Reel or offcut.
    pub sort: StockSort,
    /// Its bin; blank is not said.
    pub bin: String,
    /// The supplier's name for it.
    pub label: String,
    /// First day of the period printed on it; none is not known.
    pub made: Option<NaiveDate>,
    /// Its length before.
    pub length_mm: Millimetres,
    /// The lengths that are cut from it.
    pub cuts_mm: Vec<Millimetres>,
    /// Its length after, the saw's kerf taken off.
    pub left_mm: Millimetres,
    /// Whether the rest is kept; one of an offcut that is too short is scrap.
    pub kept: bool,
}

/// Lengths of one hose, cut from what one store has of it.
#[derive(Debug)]
pub(in crate::commands) struct Cutting {
    /// The line of the hose; none while it is not said.
    pub line: Option<NeedLine>,
    /// What is cut from what; nothing while a length is not known.
    pub from: Vec<CutFrom>,
    /// The plan, and the pieces it names by their place.
    pub plan: Option<CutPlan>,
    /// For each length asked for, the piece it is cut from.
    pub of: Vec<Option<PieceId>>,
    pub said: Vec<Said>,
    /// Not all pieces were planned with.
    partial: bool,
}

impl Cutting {
    /// Lengths of a hose that is not said are cut from nothing; of lengths that are not all known there is no plan.
    pub(in crate::commands) fn of(
        api: &mut Api,
        shelf: &Shelf,
        hose: &Option<Thing>,
        lengths: &[Option<Millimetres>],
        kerf: Option<Millimetres>,
    ) -> Result<Self, ApiError> {
        let mut cut = Self {
            line: None,
            from: Vec::new(),
            plan: None,
            of: vec![None; lengths.len()],
            said: Vec::new(),
            partial: false,
        };
        let Some(hose) = hose else { return Ok(cut) };
        let kerf = kerf.unwrap_or(Millimetres(0.0));
        let pieces = cut.longest(api, shelf, hose);
        let known: Option<Vec<Millimetres>> = lengths.iter().copied().collect();
        let (mut stands, mut wanted) = (Stands::NotKnown, 0);
        if let Some(known) = known {
            cut.planned(api, &pieces, &known, kerf)?;
            for length in &known {
                wanted += tenths("cut_length_mm", Millimetres(length.get() + kerf.get()))?;
            }
            let unmade = cut.plan.as_ref().is_some_and(|plan| !plan.unmade.is_empty());
            stands = match (unmade, shelf.keeps_hose(hose)) {
                (false, _) => Stands::There,
                (true, true) => Stands::Short,
                (true, false) => Stands::NotKept,
            };
        }
        cut.line = Some(NeedLine {
            part: StockKind::Hose,
            item: Some(hose.clone().into()),
            roles: Vec::new(),
            name: hose_name(hose),
            wanted: (wanted + 9) / 10,
            unit: StockUnit::Millimetres,
            state: stands,
            quantity: pieces.iter().map(|kept| kept.tenths_mm).sum::<i64>() / 10,
            bins: cut.bins(),
            doubtful: Vec::new(),
            elsewhere: if stands == Stands::There { Vec::new() } else { shelf.hose_elsewhere(hose) },
        });
        Ok(cut)
    }

    /// The pieces that are planned with, in an order that the same van has on every device: of two that would do alike the
    /// older is cut first. Of more than can be planned with the longest, which is said.
    fn longest<'a>(&mut self, api: &Api, shelf: &'a Shelf, hose: &Thing) -> Vec<&'a PieceKept> {
        let mut pieces = shelf.pieces_of(hose);
        if pieces.len() > Batch::MOST {
            pieces.sort_by_key(|kept| std::cmp::Reverse(kept.tenths_mm));
            pieces.truncate(Batch::MOST);
            let name = hose_name(hose);
            self.said.push(Said::of(api.words(), SaidCode::TooManyPieces, &[("name", &name)]));
            self.partial = true;
        }
        pieces.sort_by(|one, other| in_turn(one).cmp(&in_turn(other)));
        pieces
    }

    fn planned(
        &mut self,
        api: &mut Api,
        pieces: &[&PieceKept],
        lengths: &[Millimetres],
        kerf: Millimetres,
    ) -> Result<(), ApiError> {
        let useful = api.settings()?.offcut_mm;
        let stock = pieces
            .iter()
            .map(|kept| cutting::Stock { sort: kept.piece.record.sort, length_mm: mm(kept.tenths_mm) });
        let mut plan = cutting::cut(&Batch {
            pieces_mm: lengths.to_vec(),
            stock: stock.collect(),
            kerf_mm: kerf,
            useful_mm: useful.unwrap_or(Millimetres(0.0)),
        })?;
        if self.partial {
            // What was left out may better it.
            (plan.proved, plan.least_reel_mm) = (false, Millimetres(0.0));
        }
        for one in &plan.cuts {
            let Some(kept) = pieces.get(one.stock) else { continue };
            for place in &one.pieces {
                self.of[*place] = Some(kept.piece.record.piece);
            }
            let cuts_mm = one.pieces.iter().filter_map(|place| lengths.get(*place).copied()).collect();
            self.from.push(cut_from(kept, cuts_mm, one.left_mm, one.kept));
            // Two offcuts of one bin are one thing to say.
            self.said.extend(aged(api, &kept.piece.record).filter(|said| !self.said.contains(said)));
        }
        self.plan = Some(plan);
        Ok(())
    }

    /// The bins of what is cut from.
    fn bins(&self) -> Vec<String> {
        let mut bins: Vec<String> = self.from.iter().map(|from| from.bin.clone()).collect();
        bins.retain(|bin| !bin.is_empty());
        bins.sort();
        bins.dedup();
        bins
    }
}

/// What puts a piece before another: its age, and whatever else a person sees of it. Ids are drawn by chance and come last.
fn in_turn(kept: &PieceKept) -> impl Ord + '_ {
    let record = &kept.piece.record;
    let age = (record.made.is_none(), record.made);
    (age, kept.tenths_mm, &record.bin, &record.label, record.piece)
}

fn cut_from(kept: &PieceKept, cuts_mm: Vec<Millimetres>, left_mm: Millimetres, keep: bool) -> CutFrom {
    let record = &kept.piece.record;
    CutFrom {
        piece: record.piece,
        sort: record.sort,
        bin: record.bin.clone(),
        label: record.label.clone(),
        made: record.made,
        length_mm: mm(kept.tenths_mm),
        cuts_mm,
        left_mm,
        kept: keep,
    }
}

/// A hose by its name and what stands on its piece, or where that lies.
fn piece_name(piece: &Piece) -> String {
    let name = hose_name(&piece.hose);
    let marks = [piece.label.as_str(), piece.bin.as_str()];
    match marks.into_iter().find(|mark| !mark.is_empty()) {
        Some(mark) => format!("{name} ({mark})"),
        None => name,
    }
}

/// A piece older than hose should be when it is made into an assembly, by the shortest guide age that may be meant; or of
/// an age that nobody knows.
pub(super) fn aged(api: &Api, piece: &Piece) -> Option<Said> {
    let name = piece_name(piece);
    let Some(made) = piece.made else {
        return Some(Said::of(api.words(), SaidCode::HoseAgeNotKnown, &[("name", &name)]));
    };
    let months = api.catalogue.ages_of(AgeOf::HoseStorage).map(|age| age.months).min()?;
    let limit = made.checked_add_months(chrono::Months::new(months))?;
    (api.today() > limit).then(|| {
        let values = [("name", name.as_str()), ("made", &made.to_string()), ("months", &months.to_string())];
        Said::of(api.words(), SaidCode::HoseOld, &values)
    })
}
