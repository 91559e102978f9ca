package wainbook.pack.page.view;

import java.util.Arrays;
import java.util.List;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Way;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.instruments.InstrumentRow;

/** The form of a receipt inspection. */
public record ReceiptView(Filled filled) {

    /** One thing to look at. */
    public record Look(String name, String text, List<Option> options) {}

    public List<Look> looks() {
        return Arrays.stream(Looked.values())
                .map(one -> new Look(
                        one.name(),
                        Words.of("pack.look." + one.name()),
                        List.of(
                                new Option("yes", Words.of("pack.sound." + one.name())),
                                new Option("no", Words.of("pack.unsound." + one.name())))))
                .toList();
    }

    public List<Option> ways() {
        return Arrays.stream(Way.values())
                .map(one -> new Option(one.name(), Words.of("pack.way." + one.name())))
                .toList();
    }

    public List<Option> prefixes() {
        return Arrays.stream(Prefix.values())
                .map(one -> new Option(one.name(), one.sign()))
                .toList();
    }

    public List<Option> shown() {
        return List.of(
                new Option("value", Words.of("pack.shownValue")), new Option("ceiling", Words.of("pack.shownCeiling")));
    }

    public List<Option> instruments() {
        return InstrumentRow.ofKind("insulation-tester").stream()
                .map(row -> new Option(row.code, row.inWords()))
                .toList();
    }
}
