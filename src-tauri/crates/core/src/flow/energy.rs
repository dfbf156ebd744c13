//! Energy that waits in a line under pressure: why a proof test is done with liquid, never with gas.

/// Pressure of the atmosphere in Pa (ISO 2533 standard atmosphere).
pub(super) const ATMOSPHERE_PA: f64 = 101_325.0;

/// Ratio of the specific heats of air.
pub(super) const GAMMA_AIR: f64 = 1.4;

/// Strain energy in J of liquid and wall at a gauge pressure: p^2 V / (2 K), K the effective bulk
/// modulus as [`surge`](super::surge()) gives it.
pub fn stored_energy_liquid(pressure_pa: f64, volume_m3: f64, effective_bulk_modulus_pa: f64) -> f64 {
    pressure_pa * pressure_pa * volume_m3 / (2.0 * effective_bulk_modulus_pa)
}

/// Work in J of air that expands without gain or loss of heat from a gauge pressure to the
/// atmosphere's, as pressure test practice reckons it.
pub fn stored_energy_gas(pressure_pa: f64, volume_m3: f64) -> f64 {
    let absolute = pressure_pa + ATMOSPHERE_PA;
    let exponent = (GAMMA_AIR - 1.0) / GAMMA_AIR;
    absolute * volume_m3 / (GAMMA_AIR - 1.0) * (1.0 - (ATMOSPHERE_PA / absolute).powf(exponent))
}

/// Energy in J that brings air to a gauge pressure at constant volume (Brode 1959): the upper bound.
pub fn stored_energy_gas_brode(pressure_pa: f64, volume_m3: f64) -> f64 {
    pressure_pa * volume_m3 / (GAMMA_AIR - 1.0)
}
