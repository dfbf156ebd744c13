//! Oil in the line: velocity, friction, pressure drop, viscosity at temperature, and surge.

mod elbow;
mod energy;
mod error;
mod friction;
mod line;
mod pressure_drop;
mod surge;
mod velocity;
mod viscosity;
mod viscosity_index;
mod viscosity_index_table;

pub use elbow::Elbow;
pub use energy::{stored_energy_gas, stored_energy_gas_brode, stored_energy_liquid};
pub use error::FlowError;
pub use friction::{Regime, friction_factor, fully_turbulent_steel};
pub use line::{Assumption, OilAnswer, OilError, OilQuestion, SizeTried, Stopped, UsualSpeed, oil};
pub use pressure_drop::{FlowAnswer, FlowQuestion, Fluid, flow};
pub use surge::{SurgeAnswer, SurgeQuestion, surge};
pub use velocity::{bore_for, velocity};
pub use viscosity::Walther;
pub use viscosity_index::{BasicValues, basic_values, viscosity_index};
