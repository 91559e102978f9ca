package wainbook.ledger.bytes;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Kinds;
import wainbook.ledger.Ledger;
import wainbook.ledger.OwnLedger.Filing.Filed;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.works.Role;
import wainbook.works.WorksSaying;

/** A ledger of a few streams of every sort, written as the program writes: always the same bytes. */
final class SmallLedger {

    private static final Instant START = Instant.parse("2026-03-02T06:00:00.000001Z");

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    private final Ledger ledger;
    private int told;

    private SmallLedger(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Writes it; writing it again changes nothing. */
    static void write(Ledger ledger, EvidenceFiles files) {
        var small = new SmallLedger(ledger);
        small.say(Subject.works(), new WorksSaying.Named("Dockside works", "Europe/London"));
        for (String number : List.of("1001", "1002", "1003")) {
            Subject person = Subject.person(number);
            small.say(person, new WorksSaying.Engaged(Said.hash(number), List.of(Role.TECHNICIAN)));
            small.say(
                    person,
                    new WorksSaying.CompetenceGiven(
                            "forklift", 0, LocalDate.of(2026, 1, 1), LocalDate.of(2027, 1, 1), "card “7”, café\n"));
            small.say(person, new WorksSaying.RolesGiven(List.of(Role.TECHNICIAN, Role.TEAM_LEADER)));
        }
        small.say(Subject.person("1003"), new WorksSaying.Left("moved away"));
        Subject meter = Subject.instrument("IM-1");
        small.say(
                meter,
                new WorksSaying.InstrumentRegistered(
                        "insulation tester",
                        "1000 V, 20 GΩ",
                        "Mohm",
                        new BigDecimal("0.10"),
                        new BigDecimal("20000"),
                        Optional.of(new BigDecimal("3.0"))));
        small.say(meter, new WorksSaying.CalibratedBefore(LocalDate.of(2026, 2, 1), LocalDate.of(2027, 2, 1), "C-77"));
        small.say(meter, new WorksSaying.InstrumentWithdrawnBefore("dropped"));
        for (String order : List.of("WB-0142", "WB-0143")) {
            EvidenceFile photo = files.keep(("photo of " + order).getBytes(StandardCharsets.UTF_8), "image/jpeg");
            EvidenceFile sheet = files.keep("weighbridge".getBytes(StandardCharsets.UTF_8), "text/csv");
            small.say(Subject.workOrder(order), new Filed("chassis number", List.of(photo)));
            small.say(Subject.workOrder(order), new Filed("axle loads", List.of(sheet, photo)));
        }
        small.say(new Subject(Subject.Sort.UNIT, "PACK-9"), new Filed("none", List.of()));
        small.say(Subject.checkSheet("CS-1"), new Filed("none", List.of()));
    }

    private void say(Subject subject, Saying saying) {
        told++;
        Instant at = START.plusSeconds(61L * told);
        Actor actor = new Actor(
                "1001",
                told % 2 == 0 ? Optional.of(at.minusMillis(1500)) : Optional.empty(),
                told % 3 == 0 ? Optional.of("S03") : Optional.empty(),
                Clock.fixed(at, ZoneOffset.UTC));
        UUID id = UUID.nameUUIDFromBytes(("told " + told).getBytes(StandardCharsets.UTF_8));
        Class<? extends Saying> read = Kinds.newest(saying).getClass();
        ledger.write(new Told(id, List.of(subject), read), actor, reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(subject + ": " + reasons);
                });
    }
}
