package wainbook.station;

import java.util.Map;
import wainbook.process.sheet.CheckItem;

/** A check item where it stands: on its own sheet, also when it is done at another stage. */
public record SheetLine(String sheet, int revision, CheckItem item) {

    /** The item's name across all sheets. */
    public String name() {
        return sheet + "/" + item.key();
    }

    /** With the rows that a vehicle of these facts has. */
    SheetLine on(Map<String, String> stated) {
        return item.asks().rowsByFact().isEmpty() ? this : new SheetLine(sheet, revision, item.on(stated));
    }
}
