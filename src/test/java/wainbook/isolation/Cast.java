package wainbook.isolation;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.fact.Person;
import wainbook.isolation.fact.Register;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.permit.Work;
import wainbook.isolation.proof.Scope;
import wainbook.process.plan.Check;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Point.Pair;
import wainbook.process.plan.Source;

/** The few people, instruments and things that all tests of this room share, and what they say when all is well. */
public final class Cast {
    public static final Instant MORNING = Instant.parse("2026-03-02T06:00:00Z");
    public static final String AUTHORISED = "P-01";
    public static final String SECOND_AUTHORISED = "P-02";
    public static final String TECHNICIAN = "P-11";
    public static final String LEARNER = "P-12";
    public static final String OUTSIDER = "P-90";
    public static final String OTHER_ISSUER = "P-51";
    public static final List<String> PEOPLE = List.of(AUTHORISED, SECOND_AUTHORISED, TECHNICIAN, LEARNER, OUTSIDER);
    public static final String STATION = "S4";
    public static final BigDecimal KNOWN_VOLT = new BigDecimal("240");
    public static final Limits LIMITS = Limits.usual();

    public static final Plan PLAN = plan(false);
    public static final Plan TRAVELLING_PLAN = plan(true);

    private Cast() {}

    private static Plan plan(boolean mayTravel) {
        return new Plan(
                "ISO-2PACK",
                3,
                "rigid-2-pack",
                List.of(source("PACK-1"), source("INLET")),
                List.of(source("PACK-2")),
                List.of(
                        new Point("JB-A", "PACK-1", "junction box A", List.copyOf(Point.RAILS)),
                        new Point("JB-B", "INLET", "junction box B", List.copyOf(Point.RAILS)),
                        new Point("JB-C", "PACK-2", "junction box C", List.copyOf(Point.RAILS))),
                5,
                new BigDecimal("750"),
                mayTravel,
                List.of(
                        new Check("COVERS", "covers, seals and interlocks on", false),
                        new Check("BOND", "bonding", true)));
    }

    private static Source source(String code) {
        return new Source(code, code, "service disconnect, both poles", "hasp on the disconnect", "gap is seen");
    }

    public static Person person(String number, int level, boolean issuer) {
        return new Person(number, level, MORNING.plus(Duration.ofDays(300)), Optional.empty(), issuer, false);
    }

    public static final List<Person> AUTHORITIES = List.of(
            person(AUTHORISED, 3, true),
            person(SECOND_AUTHORISED, 3, true),
            person(TECHNICIAN, 2, false),
            person(LEARNER, 1, false),
            person(OTHER_ISSUER, 2, true),
            new Person(OUTSIDER, 0, MORNING.plus(Duration.ofDays(300)), Optional.empty(), false, true));

    public static Instrument instrument(String code, Instrument.Sort sort) {
        return new Instrument(
                code,
                sort,
                new BigDecimal("1000"),
                MORNING.plus(Duration.ofDays(100)),
                Optional.empty(),
                Optional.empty());
    }

    public static final Instrument TESTER = instrument("VT-1", Instrument.Sort.TWO_POLE_DETECTOR);
    public static final Instrument OTHER_TESTER = instrument("VT-2", Instrument.Sort.TWO_POLE_DETECTOR);
    public static final Instrument KNOWN_SOURCE = instrument("PU-1", Instrument.Sort.DIRECT_VOLTAGE_PROVING_UNIT);
    public static final Instrument INSULATION = instrument("IT-1", Instrument.Sort.INSULATION_TESTER);
    public static final Instrument GLOVES = instrument("GL-1", Instrument.Sort.GLOVES);

    public static final Register REGISTER = new Register(java.util.stream.Stream.of(
                    PEOPLE.stream().map(Cast::lockItem),
                    PEOPLE.stream().map(who -> item("TAG-" + who, Register.Sort.TAG)),
                    List.of(
                            item("BOX-1", Register.Sort.LOCK_BOX),
                            item("KEY-1", Register.Sort.VEHICLE_KEY),
                            item("SPARE-1", Register.Sort.LOCK))
                            .stream())
            .flatMap(items -> items)
            .toList());

    private static Register.Item lockItem(String who) {
        return new Register.Item(lockOf(who), Register.Sort.LOCK, Optional.of(who), false);
    }

    private static Register.Item item(String number, Register.Sort sort) {
        return new Register.Item(number, sort, Optional.empty(), false);
    }

    public static String lockOf(String who) {
        return "LOCK-" + who;
    }

    public static Facts facts(Instant now) {
        return facts(now, PLAN);
    }

    public static Facts facts(Instant now, Plan plan) {
        return facts(now, plan, AUTHORITIES, List.of(TESTER, OTHER_TESTER, KNOWN_SOURCE, INSULATION, GLOVES));
    }

    public static Facts facts(Instant now, Plan plan, List<Person> people, List<Instrument> instruments) {
        return new Facts(
                true,
                Optional.of(STATION),
                Optional.of(plan),
                LIMITS,
                false,
                now.plus(Duration.ofDays(1)),
                people,
                instruments,
                REGISTER,
                Set.of(),
                List.of("PACK-1", "INLET"),
                List.of());
    }

    public static Moment by(String who, Instant at) {
        return Moment.of(who, at);
    }

    public static Level level(int level) {
        return new Level(level, MORNING.plus(Duration.ofDays(300)));
    }

    public static Planned planned(int isolation, Plan plan) {
        return new Planned(isolation, STATION, plan, LIMITS, level(3), Step.PLAN.confirmed());
    }

    public static ShutDown shutDown() {
        return new ShutDown("BOX-1", List.of("KEY-1"), Step.SHUT_DOWN.confirmed());
    }

    public static LockedOn lockedOn(String who) {
        return new LockedOn(lockOf(who), "TAG-" + who, level(2));
    }

    public static LockedOff lockedOff(String who) {
        return new LockedOff(lockOf(who));
    }

    public static Proving proving(String readingVolt) {
        return new Proving(TESTER.used(), KNOWN_SOURCE.used(), KNOWN_VOLT, new BigDecimal(readingVolt));
    }

    public static TesterProvedBefore testerProvedBefore(Scope scope) {
        return new TesterProvedBefore(scope, proving("239"), level(3));
    }

    public static TesterProvedAfter testerProvedAfter(String readingVolt) {
        return new TesterProvedAfter(proving(readingVolt));
    }

    public static List<Reading> readings(String volt) {
        return Arrays.stream(Pair.values())
                .filter(pair -> !pair.alternating())
                .map(pair -> new Reading(pair, new BigDecimal(volt)))
                .toList();
    }

    public static PointMeasured measured(String point, String volt) {
        return new PointMeasured(point, TESTER.code(), readings(volt));
    }

    public static PointMeasuredAgain measuredAgain(String point, String volt) {
        return new PointMeasuredAgain(point, TESTER.code(), readings(volt));
    }

    public static ProofWitnessed witnessed() {
        return new ProofWitnessed(level(3));
    }

    public static Work work() {
        return new Work("fit the DC/DC converter", "nothing upstream of junction box A", "pack terminals stay live");
    }

    public static PermitIssued permit(int number, String receiver, Instant until) {
        return new PermitIssued(
                number, receiver, work(), List.of("JB-A"), until, level(3), false, Step.ISSUE_PERMIT.confirmed());
    }

    public static PaperRead read(int number) {
        return new PaperRead(number, level(2));
    }

    public static WorkStopped stopped(StopCause cause) {
        return new WorkStopped(cause, Optional.empty());
    }

    public static WorkResumed resumed(int permit, List<String> locksSeen) {
        return new WorkResumed(permit, locksSeen, level(3), Step.RESUME.confirmed());
    }

    public static HandedBack handedBack(boolean clear) {
        return new HandedBack(true, clear, false);
    }

    public static SanctionIssued sanction(int number, String holder, Instant until) {
        return new SanctionIssued(
                number, holder, work(), INSULATION.used(), until, level(3), Step.ISSUE_SANCTION.confirmed());
    }

    public static TestEnded testEnded() {
        return new TestEnded(Step.END_TEST.confirmed());
    }

    public static LivePermitIssued livePermit(int number, String tester, String second, Instant until) {
        return new LivePermitIssued(
                number, tester, work(), second, GLOVES.used(), until, level(3), Step.ISSUE_LIVE_PERMIT.confirmed());
    }

    public static RestorationChecked checked(String check) {
        return new RestorationChecked(check, true, Optional.empty());
    }

    public static Restored restored(String who) {
        return new Restored(lockOf(who), level(3), Step.RESTORE.confirmed());
    }

    public static LockReportedAbandoned reportedAbandoned(String who) {
        return new LockReportedAbandoned(lockOf(who), "went home ill", Step.REPORT_ABANDONED_LOCK.confirmed());
    }

    public static AbandonedLockRemoved removed(String who) {
        return new AbandonedLockRemoved(lockOf(who), Step.REMOVE_ABANDONED_LOCK.confirmed());
    }
}
