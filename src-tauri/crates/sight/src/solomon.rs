//! Reed-Solomon over the QR code's field, GF(256) by x^8 + x^4 + x^3 + x^2 + 1, with missing codewords.
//!
//! The library's decoder takes every error that the code could carry and knows no missing codewords; a reader that
//! must not misread keeps some in hand, and a place under glare is known to be unknown.

/// Powers and logarithms of the primitive element 2.
const TABLES: ([u8; 512], [u8; 256]) = {
    let (mut powers, mut logs) = ([0; 512], [0; 256]);
    let (mut value, mut power) = (1_u32, 0);
    while power < 255 {
        powers[power] = value as u8;
        powers[power + 255] = value as u8;
        logs[value as usize] = power as u8;
        value <<= 1;
        if value > 255 {
            value ^= 0b1_0001_1101;
        }
        power += 1;
    }
    (powers, logs)
};

fn times(a: u8, b: u8) -> u8 {
    if a == 0 || b == 0 {
        0
    } else {
        TABLES.0[usize::from(TABLES.1[usize::from(a)]) + usize::from(TABLES.1[usize::from(b)])]
    }
}

fn power(exponent: usize) -> u8 {
    TABLES.0[exponent % 255]
}

fn inverse(a: u8) -> u8 {
    TABLES.0[255 - usize::from(TABLES.1[usize::from(a)])]
}

/// The value of a polynomial, lowest coefficient first.
fn value(polynomial: &[u8], x: u8) -> u8 {
    polynomial.iter().rev().fold(0, |sum, part| times(sum, x) ^ part)
}

/// The block without its errors. `missing` are places whose codewords are not known; twice the errors and the missing
/// ones together are at most `usable` of the `spare` codewords.
pub(crate) fn corrected(block: &[u8], spare: usize, missing: &[usize], usable: usize) -> Option<Vec<u8>> {
    let length = block.len();
    let syndromes: Vec<u8> =
        (0..spare).map(|root| block.iter().fold(0, |sum, word| times(sum, power(root)) ^ word)).collect();
    if syndromes.iter().all(|part| *part == 0) {
        return Some(block.to_vec());
    }
    if missing.len() > usable {
        return None;
    }
    let locator = locator(&syndromes, length, missing, usable)?;
    let mut wrong: Vec<usize> = Vec::new();
    for place in 0..length {
        let x = power(length - 1 - place);
        if value(&locator, inverse(x)) == 0 {
            wrong.push(place);
        }
    }
    if wrong.len() != locator.len() - 1 {
        return None;
    }
    let mut corrected = block.to_vec();
    let evaluator: Vec<u8> = (0..spare)
        .map(|at| {
            (0..=at.min(locator.len() - 1))
                .fold(0, |sum, part| sum ^ times(locator[part], syndromes[at - part]))
        })
        .collect();
    for &place in &wrong {
        let x = power(length - 1 - place);
        let back = inverse(x);
        // The derivative has the odd terms alone.
        let slope = locator.iter().enumerate().skip(1).step_by(2).fold(0, |sum, (at, part)| {
            sum ^ times(*part, power(usize::from(TABLES.1[usize::from(back)]) * (at - 1)))
        });
        if slope == 0 {
            return None;
        }
        corrected[place] ^= times(times(x, value(&evaluator, back)), inverse(slope));
    }
    let clean =
        (0..spare).all(|root| corrected.iter().fold(0, |sum, word| times(sum, power(root)) ^ word) == 0);
    clean.then_some(corrected)
}

/// The polynomial whose roots tell the wrong places: Berlekamp and Massey's, begun with the missing ones.
fn locator(syndromes: &[u8], length: usize, missing: &[usize], usable: usize) -> Option<Vec<u8>> {
    let mut current = vec![1_u8];
    for place in missing {
        let x = power(length - 1 - place);
        current.push(0);
        for at in (1..current.len()).rev() {
            current[at] ^= times(current[at - 1], x);
        }
    }
    let mut before = current.clone();
    let mut errors = missing.len();
    for step in missing.len()..syndromes.len() {
        let discrepancy = current
            .iter()
            .enumerate()
            .take(step + 1)
            .fold(0, |sum, (at, part)| sum ^ times(*part, syndromes[step - at]));
        before.insert(0, 0);
        if discrepancy == 0 {
            continue;
        }
        let mut next = current.clone();
        next.resize(next.len().max(before.len()), 0);
        for (to, part) in next.iter_mut().zip(&before) {
            *to ^= times(discrepancy, *part);
        }
        if 2 * errors <= step + missing.len() {
            errors = step + 1 + missing.len() - errors;
            before = current.iter().map(|part| times(*part, inverse(discrepancy))).collect();
        }
        current = next;
    }
    while current.last() == Some(&0) {
        current.pop();
    }
    let found = current.len() - 1;
    (found >= missing.len() && 2 * (found - missing.len()) + missing.len() <= usable).then_some(current)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rxing::common::reedsolomon::{PredefinedGenericGF, ReedSolomonEncoder};

    fn written(data: usize, spare: usize) -> Vec<u8> {
        let mut block: Vec<i32> = (0..data).map(|at| (at * 37 + 11) as i32 % 256).collect();
        block.resize(data + spare, 0);
        let mut encoder =
            ReedSolomonEncoder::new(PredefinedGenericGF::QrCodeField256.into()).expect("a field");
        encoder.encode(&mut block, spare).expect("codewords");
        block.iter().map(|word| *word as u8).collect()
    }

    #[test]
    fn every_number_of_errors_and_missing_within_the_bound_is_corrected_and_none_beyond() {
        for (data, spare, usable) in [(19, 7, 5), (16, 10, 8), (34, 20, 18), (100, 30, 27)] {
            let whole = written(data, spare);
            for missing in 0..=usable {
                for errors in 0..=spare {
                    let mut block = whole.clone();
                    let places: Vec<usize> = (0..missing).map(|at| (at * 7 + 3) % block.len()).collect();
                    let unique = places.iter().collect::<std::collections::BTreeSet<_>>().len() == missing;
                    if !unique {
                        continue;
                    }
                    places.iter().for_each(|at| block[*at] ^= 0x5A);
                    let others = (0..block.len()).filter(|at| !places.contains(at)).step_by(2).take(errors);
                    let others: Vec<usize> = others.collect();
                    others.iter().for_each(|at| block[*at] ^= (at * 3 + 1) as u8 | 1);
                    let found = corrected(&block, spare, &places, usable);
                    if missing + 2 * others.len() <= usable {
                        assert_eq!(
                            found.as_ref(),
                            Some(&whole),
                            "{data}+{spare}: {missing} missing, {errors} wrong"
                        );
                    } else if missing + 2 * others.len() <= spare {
                        assert_eq!(found, None, "{data}+{spare}: {missing} missing, {errors} wrong");
                    }
                }
            }
        }
    }
}
