package wainbook.isolation.fact;

import wainbook.act.Reason;

/** Where the rules of this room come from, each as well known as we know it. */
public final class Sources {
    public static final String FIVE_RULES = "EN 50110-1 clause 6.2, the five safety rules (clause from memory)";
    public static final String PROVING = "HSE GS38, proving before and after";
    public static final String INSTRUMENT = "HSE GS38, voltage detectors";
    static final String CLASS_A = "ISO 6469-3 clause 4, voltage class A (clause from memory)";
    public static final String LEVELS = "DGUV Information 209-093, levels (from a summary)";
    public static final String COMPETENT = "Electricity at Work Regulations 1989 regulation 16 (wording from memory)";
    public static final String DEAD_OR_LIVE =
            "Electricity at Work Regulations 1989 regulation 14 (wording from memory)";
    public static final String OWN_LOCK = "29 CFR 1910.147(e)(3), only its owner removes a lock";
    public static final String PERMITS = "HSE HSG250, permit systems (from its contents)";
    public static final String GLOVES = "29 CFR 1910.137, electrical protective equipment";
    public static final String PRACTICE = Reason.PRACTICE;
    public static final String WORKS = Reason.WORKS_RULE;

    private Sources() {}
}
