package wainbook.handover.record.page;

import wainbook.page.Words;

/** Where a handover record stands. */
public enum RecordStage {
    GIVEN("recordGiven", "done", "safe"),
    GIVEN_UNSIGNED("recordGivenUnsigned", "alert", "warn"),
    OPEN("recordOpen", "clock", "must"),
    READY("recordReady", "signature", "must"),
    STALE("recordStale", "alert", "danger"),
    UNSIGNED("recordUnsigned", "alert", "warn"),
    RECEIPTED("recordReceipted", "done", "safe");

    private final String key;
    private final String sign;
    private final String meaning;

    RecordStage(String key, String sign, String meaning) {
        this.key = key;
        this.sign = sign;
        this.meaning = meaning;
    }

    public String sign() {
        return sign;
    }

    public String meaning() {
        return meaning;
    }

    public String word() {
        return Words.of("handover." + key);
    }
}
