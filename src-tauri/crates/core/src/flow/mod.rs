//! Oil in the line: velocity, friction, pressure drop, viscosity at temperature, and surge.
