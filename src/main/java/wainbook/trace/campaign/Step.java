package wainbook.trace.campaign;

/** What can be done for one vehicle of a campaign. */
public enum Step {
    ADD,
    ASK_OUT,
    AGREE_OUT,
    KEEP_IN,
    SEND_LETTER,
    ANSWER,
    ORDER_REWORK,
    SETTLE
}
