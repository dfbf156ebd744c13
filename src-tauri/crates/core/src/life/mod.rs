//! How long hoses last: Weibull and Kaplan-Meier from times with some still in service.
