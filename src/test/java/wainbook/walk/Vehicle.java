package wainbook.walk;

/** The vehicle that a walk is about. */
record Vehicle(String order, String vin) {}
