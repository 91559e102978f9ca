package wainbook.pack;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.pack.PackSaying.Authority;
import wainbook.pack.PackSaying.Finding;
import wainbook.pack.PackSaying.Insulation;
import wainbook.pack.PackSaying.Judged;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Outside;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.PackSaying.Remark;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.SentOff;
import wainbook.pack.PackSaying.StorageChecked;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.PackSaying.Watched;
import wainbook.pack.PackSaying.Way;
import wainbook.pack.watch.Alarm;

/** The entries of one pack, for rules that need no ledger. */
public final class OnePack {

    public static final String SERIAL = "PK-1";
    public static final Instant NINE = Instant.parse("2026-03-10T09:00:00Z");
    public static final Optional<String> PAPER = Optional.of("TS-1");

    private static final Authority BY = new Authority("HV", 3, LocalDate.of(2026, 12, 31));

    private History history = History.empty(new Subject(Subject.Sort.UNIT, SERIAL));

    public OnePack say(Instant at, Saying saying) {
        history = history.and(new Entry(
                new UUID(0, history.number()),
                history.subject(),
                history.number() + 1,
                Moment.of("7001", at),
                "0".repeat(64),
                saying));
        return this;
    }

    public OnePack say(Saying saying) {
        return say(NINE, saying);
    }

    public History history() {
        return history;
    }

    public Pack pack() {
        return Pack.of(history).orElseThrow();
    }

    public static PackReceived received(Verdict verdict, Remark... remarks) {
        return new PackReceived(
                "A",
                "LOT-7",
                LocalDate.of(2026, 1, 5),
                new BigDecimal("40"),
                new BigDecimal("650"),
                Arrays.stream(Looked.values()).map(look -> new Seen(look, true)).toList(),
                new Insulation(
                        Way.TERMINALS_JOINED,
                        new BigDecimal("100000000"),
                        false,
                        new BigDecimal("1000"),
                        new BigDecimal("756"),
                        new BigDecimal("500"),
                        new BigDecimal("5"),
                        "IT-1",
                        LocalDate.of(2026, 12, 1),
                        Finding.PASS),
                PAPER,
                PAPER,
                "R-1",
                Optional.empty(),
                BY,
                List.of(remarks),
                verdict);
    }

    public static StorageChecked checked(String place, Outside... outside) {
        return new StorageChecked(
                new BigDecimal("38"), new BigDecimal("20"), true, place, Optional.empty(), BY, List.of(outside));
    }

    public static Quarantined setAside(Optional<String> place, Optional<String> lot, boolean heating) {
        return new Quarantined(
                Trigger.DENTED, heating, place, lot, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static Quarantined setAside() {
        return setAside(Optional.empty(), Optional.empty(), false);
    }

    public static Watched read(Alarm... alarms) {
        return new Watched(new BigDecimal("20"), new BigDecimal("18"), List.of(alarms), Optional.empty());
    }

    public static Judged judged(Judgement judgement) {
        return new Judged(judgement, "looked at", BY);
    }

    public static SentOff sentOff() {
        return new SentOff("the maker", Optional.empty());
    }
}
