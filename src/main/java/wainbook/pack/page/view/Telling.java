package wainbook.pack.page.view;

import wainbook.ledger.Saying;
import wainbook.pack.PackSaying.Judged;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.PackSaying.SentOff;
import wainbook.pack.PackSaying.StorageChecked;
import wainbook.pack.PackSaying.Watched;
import wainbook.page.Words;

/** What an entry of a pack's stream says, in one sentence. */
final class Telling {

    private Telling() {}

    static String of(Saying saying) {
        if (saying instanceof PackReceived said) {
            return Words.of(
                    "pack.told.received",
                    said.chargePercent().toPlainString(),
                    said.voltageV().toPlainString(),
                    said.place(),
                    Words.of("pack.verdict." + said.verdict().name()));
        } else if (saying instanceof StorageChecked said) {
            return Words.of(
                    said.outside().isEmpty() ? "pack.told.checked" : "pack.told.checkedOutside",
                    said.chargePercent().toPlainString(),
                    said.temperatureC().toPlainString(),
                    said.place(),
                    said.outside().stream()
                            .map(one -> Words.of("pack.outside." + one.name()))
                            .reduce((one, other) -> one + ", " + other)
                            .orElse(""));
        } else if (saying instanceof Quarantined said) {
            return Words.of(
                    "pack.told.quarantined",
                    Words.of("pack.trigger." + said.trigger().name()),
                    said.place().orElse("–"),
                    said.words().orElse(""));
        } else if (saying instanceof Watched said) {
            return Words.of(
                    said.alarms().isEmpty() ? "pack.told.watched" : "pack.told.alarm",
                    said.packC().toPlainString(),
                    said.ambientC().toPlainString());
        } else if (saying instanceof Judged said) {
            return Words.of(
                    "pack.told.judged",
                    Words.of("pack.judgement." + said.judgement().name()),
                    said.words());
        }
        var said = (SentOff) saying;
        return Words.of("pack.told.sentOff", said.to());
    }
}
