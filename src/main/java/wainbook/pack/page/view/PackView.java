package wainbook.pack.page.view;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.pack.Pack;
import wainbook.pack.PackRow;
import wainbook.pack.PackSaying.Insulation;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.PackSaying.Watched;
import wainbook.pack.Quarantine;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * One pack with what can be done with it.
 *
 * @param againstCheck what stands against a storage check by whoever looks
 * @param againstJudging what stands against each judgement
 * @param againstSending what stands against sending it off
 * @param ofLot the other packs of its lot, where it holds them or is held
 */
public record PackView(
        PackLine line,
        Pack pack,
        List<Entry> entries,
        List<Reason> againstCheck,
        Map<Judgement, List<Reason>> againstJudging,
        List<Reason> againstSending,
        List<PackLine> ofLot,
        Optional<String> heldBy,
        Filled filled) {

    /** One reading of the watch as the table shows it. */
    public record Read(Entry entry, Watched said) {
        public boolean alarm() {
            return !said.alarms().isEmpty();
        }

        public String alarms() {
            return said.alarms().stream()
                    .map(alarm -> Words.of("pack.alarm." + alarm.name()))
                    .reduce((one, other) -> one + ", " + other)
                    .orElse("");
        }

        public String above() {
            return said.packC().subtract(said.ambientC()).toPlainString();
        }
    }

    public Optional<Quarantine> quarantine() {
        return pack.quarantine();
    }

    /** The quarantine that stands: not judged, or judged defective. */
    public Optional<Quarantine> standing() {
        return pack.gone() ? Optional.empty() : quarantine().filter(Quarantine::stands);
    }

    public Optional<PackReceived> received() {
        return pack.received();
    }

    public List<Read> watched() {
        return quarantine().stream()
                .flatMap(one -> one.watched().stream())
                .map(entry -> new Read(entry, (Watched) entry.saying()))
                .toList();
    }

    public Optional<Instant> next() {
        return standing().flatMap(one -> one.times().next());
    }

    public List<Instant> missed() {
        return standing().map(one -> one.times().missed(line.now())).orElse(List.of());
    }

    public String missedInWords() {
        return Words.of("pack.watchMissed", missed().size());
    }

    /** Whether the watch that runs began with an alarm. */
    public boolean fire() {
        return standing().flatMap(Quarantine::alarm).isPresent();
    }

    public String clock(Instant at) {
        return new Formats(line.zone()).moment(at);
    }

    public String setAsideWords() {
        return quarantine().flatMap(one -> one.said().words()).orElse("");
    }

    public boolean mayJudge() {
        return againstJudging.values().stream().anyMatch(List::isEmpty);
    }

    /** What bars the mildest judgement: shown where the others are open. */
    public List<Reason> againstSound() {
        return againstJudging.get(Judgement.SOUND);
    }

    public List<Option> judgements() {
        return Arrays.stream(Judgement.values())
                .filter(one -> againstJudging.get(one).isEmpty())
                .map(one -> new Option(one.name(), Words.of("pack.judgement." + one.name())))
                .toList();
    }

    public String insulationPath() {
        Insulation read = received().orElseThrow().insulation();
        return "/calculations/isolation-direct?" + (read.openEnded() ? "atLeastOhm=" : "measuredOhm=")
                + read.measuredOhm().toPlainString() + "&testV="
                + read.testV().toPlainString() + "&workingV="
                + read.workingV().toPlainString() + "&limitOhmPerVolt="
                + read.limitOhmPerVolt().toPlainString() + "&accuracyPercent="
                + read.accuracyPercent().toPlainString();
    }

    public String insulation() {
        Insulation read = received().orElseThrow().insulation();
        return Words.of(
                read.openEnded() ? "pack.insulationAtLeast" : "pack.insulationRead",
                read.measuredOhm().movePointLeft(6).stripTrailingZeros().toPlainString(),
                Words.of("pack.way." + read.way().name()),
                read.testV().toPlainString(),
                read.instrument(),
                Formats.date(read.instrumentDue()),
                Words.of("pack.finding." + read.finding().name()));
    }

    public String verdict() {
        return Words.of("pack.verdict." + received().orElseThrow().verdict().name());
    }

    public List<String> remarks() {
        return received().orElseThrow().remarks().stream()
                .map(one -> Words.of("pack.remark." + one.name()))
                .toList();
    }

    public List<String> notSound() {
        return received().orElseThrow().looked().stream()
                .filter(one -> !one.sound())
                .map(one -> Words.of("pack.unsound." + one.what().name()))
                .toList();
    }

    public List<String> outside() {
        return pack.outside().stream()
                .map(one -> Words.of("pack.outside." + one.name()))
                .toList();
    }

    public String made() {
        return Formats.date(received().orElseThrow().made());
    }

    public String trigger() {
        return quarantine()
                .map(one -> Words.of("pack.trigger." + one.said().trigger().name()))
                .orElse("");
    }

    public String judged() {
        return quarantine()
                .flatMap(Quarantine::judged)
                .map(said -> Words.of("pack.judgement." + said.judgement().name()))
                .orElse("");
    }

    public String told(Entry entry) {
        return Telling.of(entry.saying());
    }

    public PackRow row() {
        return line.row();
    }
}
