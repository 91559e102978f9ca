package wainbook.isolation;

/** What makes an isolation worthless at once. */
public enum Danger {
    VOLTAGE,
    LOCK_OR_TAG_MISSING,
    WHEEL_TURNED,
    CHARGER_OR_BOOSTER_CONNECTED,
    STATION_POWER_CHANGED,
    HEAT_OR_FIRE,
    PERSON_HURT,
    UNKNOWN_SOURCE,
    OTHER
}
