package wainbook.process.plan;

/** In which electrical state of the vehicle a check item is done. */
public enum ElectricalCondition {
    NONE,
    NO_SOURCE_ABOARD,
    DEAD,
    TEST_UNDER_ISOLATION,
    LIVE
}
