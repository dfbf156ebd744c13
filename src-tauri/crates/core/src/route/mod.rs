//! Where the ports are -> how tight the hose bends: the elastic rod.
