package wainbook.permit.page;

import wainbook.page.Words;
import wainbook.permit.PermitForm;
import wainbook.permit.PermitSaying.OnPaper;

/** A permit that was written on paper, as lists show it. */
public record PaperPermitLine(String vehicle, OnPaper paper) {

    public PermitForm written() {
        return paper.written();
    }

    public String sort() {
        return Words.of("permit.sort." + written().sort().name());
    }

    public String state() {
        return Words.of(written().open() ? "permit.onPaperOpen" : "permit.onPaperClosed");
    }

    public String meaning() {
        return written().open() ? "warn" : "quiet";
    }

    /** Which rules it does not keep. */
    public String remarks() {
        return String.join(" ", paper.remarks().stream().map(Words::of).toList());
    }
}
