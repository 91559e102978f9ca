package wainbook.station;

import wainbook.process.CheckItem;

/** A check item where it stands: on its own sheet, also when it is done at another stage. */
public record SheetLine(String sheet, int revision, CheckItem item) {

    /** The item's name across all sheets. */
    public String name() {
        return sheet + "/" + item.key();
    }
}
