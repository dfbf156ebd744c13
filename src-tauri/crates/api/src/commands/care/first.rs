//! A page of what can not be asked for in its order.

use std::cmp::Ordering;

/// The first of many in an order, of which never many more are held than are asked for.
pub(super) struct First<T> {
    held: Vec<T>,
    most: usize,
    order: fn(&T, &T) -> Ordering,
}

impl<T> First<T> {
    /// So many at most, in that order.
    pub(super) fn of(most: usize, order: fn(&T, &T) -> Ordering) -> Self {
        Self { held: Vec::new(), most, order }
    }

    /// One more of the many.
    pub(super) fn see(&mut self, one: T) {
        self.held.push(one);
        // Sorted once in a while: each costs as much as its place in a list of twice the page.
        if self.held.len() >= self.most.saturating_mul(2).max(64) {
            self.cut();
        }
    }

    /// The first of them in their order.
    pub(super) fn take(mut self) -> Vec<T> {
        self.cut();
        self.held
    }

    fn cut(&mut self) {
        self.held.sort_by(self.order);
        self.held.truncate(self.most);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_of_many_are_those_of_all_sorted_and_no_more_are_held() {
        let many = || (0_u32..1000).map(|number| number.wrapping_mul(2_654_435_761));
        let mut sorted: Vec<u32> = many().collect();
        sorted.sort_unstable();
        for most in [0, 1, 7, 500, usize::MAX] {
            let mut first = First::of(most, u32::cmp);
            many().for_each(|number| {
                first.see(number);
                assert!(first.held.len() <= most.saturating_mul(2).max(64));
            });
            assert_eq!(first.take(), sorted[..most.min(1000)]);
        }
    }
}
