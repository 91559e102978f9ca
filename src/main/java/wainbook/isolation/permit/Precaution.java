package wainbook.isolation.permit;

/** What a person confirms with their own eyes before a step; the program cannot see it. */
public enum Precaution {
    DAMAGE_LOOKED_FOR,
    AREA_BARRIERED,
    STATIONARY,
    WHEELS_CHOCKED,
    INLET_UNPLUGGED,
    CAB_EMPTY,
    KEYS_IN_BOX,
    ADJACENT_PARTS_SHROUDED,
    PLAN_READ_AGAIN,
    AREA_NEVER_LEFT,
    AREA_CLEAR,
    DISCHARGED,
    PEOPLE_WARNED,
    TOOLS_COUNTED,
    NO_OTHER_WAY,
    CUT_OFF_AT_HAND,
    RESCUE_READY,
    PROTECTION_WORN,
    GLOVES_AIR_TESTED,
    GLOVES_FIT,
    OWNER_NOT_ON_SITE,
    OWNER_TRIED,
    OWNER_WILL_BE_TOLD,
    VEHICLE_INSPECTED,
    PEOPLE_COUNTED
}
