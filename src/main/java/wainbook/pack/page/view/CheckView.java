package wainbook.pack.page.view;

import java.util.List;
import wainbook.pack.act.StorageWindow;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;

/** The form of a check in storage. */
public record CheckView(PackLine line, Filled filled) {

    public List<Option> dryOrNot() {
        return List.of(new Option("yes", Words.of("pack.dryYes")), new Option("no", Words.of("pack.dryNo")));
    }

    public String chargeWindow() {
        return Words.of(
                "pack.window",
                StorageWindow.LEAST_PERCENT.toPlainString(),
                StorageWindow.MOST_PERCENT.toPlainString(),
                "%");
    }

    public String temperatureWindow() {
        return Words.of(
                "pack.window", StorageWindow.COLDEST_C.toPlainString(), StorageWindow.WARMEST_C.toPlainString(), "°C");
    }
}
