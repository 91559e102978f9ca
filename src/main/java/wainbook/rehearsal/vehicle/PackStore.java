package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Subject;
import wainbook.pack.KeptParts;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.Way;
import wainbook.pack.Serials;
import wainbook.pack.Trigger;
import wainbook.pack.act.Judging.ToJudge;
import wainbook.pack.act.Keeping.ToKeep;
import wainbook.pack.act.OwnInsulation;
import wainbook.pack.act.Quarantining.ToQuarantine;
import wainbook.pack.act.Receiving.ToReceive;
import wainbook.pack.act.StorageChecking.ToCheck;
import wainbook.pack.act.Watching.ToWatch;
import wainbook.pack.watch.WatchTimes;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.crew.Acts;
import wainbook.rehearsal.crew.Crew;
import wainbook.rehearsal.crew.ToolStore;
import wainbook.works.Role;

/** The packs of the works: received before they are fitted, and a few in storage. Dice of their own, a pack each. */
public final class PackStore {

    private static final List<String> PARTS = List.of("PACK-1", "PACK-2", "PACK-3", "PACK-4");
    private static final List<Integer> WATCHED_MIN = List.of(0, 15, 30, 60, 120);
    private static final Duration SET_ASIDE_BEFORE = Duration.ofMinutes(140);

    private final Acts acts;
    private final Crew crew;
    private final ToolStore tools;

    public PackStore(Acts acts, Crew crew, ToolStore tools) {
        this.acts = acts;
        this.crew = crew;
        this.tools = tools;
    }

    /** From now on nothing is fitted as a pack that was not received. */
    public void keep(Instant from) {
        for (String part : PARTS) {
            Dice dice = Dice.of(0, "kept", part);
            if (!kept(part)) {
                done(acts.keepingPacks.keep(
                        new ToKeep(dice.id(), part, true), as(crew.anyone(Role.WORKS_ENGINEER, dice), from)));
            }
        }
    }

    private boolean kept(String part) {
        return KeptParts.of(acts.ledger.history(Subject.works())).has(part);
    }

    /** Receives a pack some days before it is fitted, if its part is kept and it is not there yet. */
    void fetch(String part, String serial, Instant fitted) {
        if (kept(part) && acts.ledger.history(Serials.subject(serial)).isEmpty()) {
            Dice dice = Dice.of(0, "pack", serial);
            Instant when = fitted.minus(Duration.ofHours(dice.between(40, 120)));
            receive(serial, "L26-" + (10 + dice.between(0, 29)), Optional.of("C-" + dice.digits(5)), when, dice);
        }
    }

    /** What lies in storage and in the quarantine place when the demonstration begins. */
    public void stock(Instant present) {
        for (int number = 1; number <= 4; number++) {
            stored("PK7000000" + number, "L26-4" + number, Optional.of("C-7010" + number), present, 3 + 3 * number);
        }
        Dice dice = Dice.of(0, "stock");
        check("PK70000002", "41", "21", present.minus(Duration.ofDays(2)), dice);
        check("PK70000003", "56", "22.5", present.minus(Duration.ofDays(2)), dice);
        stored("PK70000005", "L26-45", Optional.empty(), present, 1);
        stored("PK70000006", "L26-46", Optional.of("C-70106"), present, 6);
        stored("PK70000007", "L26-46", Optional.of("C-70107"), present, 6);
        quarantined("PK70000006", Trigger.DROPPED, present.minus(SET_ASIDE_BEFORE), dice);
        for (int minute : WATCHED_MIN) {
            watch("PK70000006", present.minus(SET_ASIDE_BEFORE).plus(Duration.ofMinutes(minute)), dice);
        }
        stored("PK70000008", "L26-48", Optional.of("C-70108"), present, 12);
        quarantined("PK70000008", Trigger.SWELLING, present.minus(Duration.ofDays(9)), dice);
        Instant swollen = present.minus(Duration.ofDays(9));
        for (Instant time : new WatchTimes(swollen, List.of()).planned()) {
            watch("PK70000008", time, dice);
        }
        judge("PK70000008", present.minus(Duration.ofDays(7)), dice);
    }

    private void stored(String serial, String lot, Optional<String> certificate, Instant present, int daysBefore) {
        if (acts.ledger.history(Serials.subject(serial)).isEmpty()) {
            receive(serial, lot, certificate, present.minus(Duration.ofDays(daysBefore)), Dice.of(0, "pack", serial));
        }
    }

    private void receive(String serial, String lot, Optional<String> certificate, Instant when, Dice dice) {
        boolean small = serial.startsWith("PS");
        String person = AtVehicle.needed(crew.authorised(2, when, dice), "receiving a pack");
        String tester = AtVehicle.needed(
                tools.fit("insulation-tester", List.of(BigDecimal.TEN), when, dice.between(0, 9)), "a pack");
        done(acts.receivingPacks.receive(
                new ToReceive(
                        dice.id(),
                        serial,
                        small ? "PS-41" : "PK-58",
                        lot,
                        LocalDate.ofInstant(when, ZoneOffset.UTC).minusDays(dice.between(40, 120)),
                        dice.figure(32, 48, 0),
                        small ? dice.figure(340, 370, 1) : dice.figure(630, 680, 1),
                        Arrays.stream(Looked.values())
                                .map(look -> new Seen(look, true))
                                .toList(),
                        new OwnInsulation(
                                Way.TERMINALS_JOINED,
                                dice.figure(60, 400, 0).multiply(BigDecimal.valueOf(1_000_000)),
                                false,
                                BigDecimal.valueOf(1000),
                                BigDecimal.valueOf(small ? 403 : 756),
                                tester),
                        Optional.of("TS-" + (small ? "35" : "70") + "-2025"),
                        certificate,
                        "Pack store, shelf " + dice.between(1, 12),
                        Optional.empty()),
                as(person, when)));
    }

    private void check(String serial, String charge, String celsius, Instant when, Dice dice) {
        done(acts.checkingPacks.check(
                new ToCheck(
                        dice.id(),
                        serial,
                        new BigDecimal(charge),
                        new BigDecimal(celsius),
                        true,
                        "Pack store, shelf " + dice.between(1, 12),
                        Optional.empty()),
                as(AtVehicle.needed(crew.authorised(2, when, dice), "checking a pack"), when)));
    }

    private void quarantined(String serial, Trigger trigger, Instant when, Dice dice) {
        done(acts.quarantining.quarantine(
                new ToQuarantine(
                        dice.id(),
                        serial,
                        trigger,
                        false,
                        Optional.of("Quarantine place in the open, bay Q1"),
                        Optional.empty(),
                        Optional.of("Found when it was brought from the store")),
                as(crew.anyone(Role.TECHNICIAN, dice), when)));
    }

    private void watch(String serial, Instant when, Dice dice) {
        done(acts.watchingPacks.watch(
                new ToWatch(dice.id(), serial, dice.figure(20, 21, 1), dice.figure(16, 16.6, 1), Optional.empty()),
                as(crew.anyone(Role.TECHNICIAN, dice), when)));
    }

    private void judge(String serial, Instant when, Dice dice) {
        done(acts.judgingPacks.judge(
                new ToJudge(
                        dice.id(),
                        serial,
                        Judgement.DEFECTIVE,
                        "Case swollen at one cell block, voltage of the block low: not to be used again"),
                as(AtVehicle.needed(crew.authorised(3, when, dice), "judging a pack"), when)));
    }

    private static Actor as(String person, Instant when) {
        return Actor.of(person, Clock.fixed(when, ZoneOffset.UTC));
    }

    private static <T> void done(Outcome<T> outcome) {
        outcome.reasons().stream().findFirst().ifPresent(reason -> {
            throw new IllegalStateException("of a pack " + reason + " is refused");
        });
    }
}
