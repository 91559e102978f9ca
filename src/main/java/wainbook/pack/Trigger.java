package wainbook.pack;

/** Why a pack is set aside as damaged or defective. Common practice, no source. */
public enum Trigger {
    DROPPED,
    DENTED,
    WET,
    FLOOD,
    VENTED,
    SMELL,
    SWELLING,
    TEMPERATURE,
    FAULT,
    ISOLATION_LOST,
    /** Also where nothing is said: setting a pack aside waits for no word. */
    OTHER
}
