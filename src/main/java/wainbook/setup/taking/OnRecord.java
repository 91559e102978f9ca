package wainbook.setup.taking;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.isolation.fact.Register;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.process.CalibrationLibrary;
import wainbook.process.ComponentLibrary;
import wainbook.process.ProcessSaying.JointsReleased;
import wainbook.process.ProcessSaying.OutlineReleased;
import wainbook.process.ProcessSaying.PlanReleased;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.ProcessSaying.StageDefined;
import wainbook.process.ProcessSaying.StationDefined;
import wainbook.process.calibration.Calibration;
import wainbook.process.component.Component;
import wainbook.process.joint.Joint;
import wainbook.setup.files.Lines;
import wainbook.setup.files.PlanFile;
import wainbook.setup.files.WorksFiles;
import wainbook.works.Person;
import wainbook.works.Role;
import wainbook.works.WorksSaying;
import wainbook.works.instruments.Instrument;

/**
 * What a works has on record, as far as its files can say it.
 *
 * @param works the works' own stream
 * @param streams those of its people, instruments and check sheets
 * @param names what people are called, by number, which the ledger does not know
 * @param today the first day, as long as the works has none
 */
record OnRecord(History works, List<History> streams, Map<String, KnownName> names, Instant today) {

    /** What lies outside the ledger about a person. */
    record KnownName(Optional<String> user, Optional<String> fullName) {}

    OnRecord {
        streams = List.copyOf(streams);
        names = Map.copyOf(names);
    }

    /** Days in the files count from here: the day of the works' first entry, which never moves. */
    LocalDate firstDay(String zoneOfFiles) {
        ZoneId zone = all(WorksSaying.Named.class)
                .findFirst()
                .map(named -> ZoneId.of(named.zone()))
                .orElseGet(() -> ZoneId.of(zoneOfFiles));
        Instant first = works.entries().stream()
                .findFirst()
                .map(entry -> entry.moment().at())
                .orElse(today);
        return LocalDate.ofInstant(first, zone);
    }

    /** Whether anything was released yet; what comes first is released by whoever sets the works up. */
    boolean hasProcess() {
        return !sheets().isEmpty() || !routes().isEmpty() || !joints().isEmpty() || !plans().isEmpty();
    }

    /** Everything that stands. */
    WorksFiles standing() {
        LocalDate first = firstDay("UTC");
        return new WorksFiles(
                ownLine(),
                people().filter(person -> !person.left()).map(this::line).toList(),
                competences(first, false),
                works.last(WorksSaying.InstrumentKindsListed.class).stream()
                        .flatMap(listed -> listed.kinds().stream())
                        .map(kind ->
                                new Lines.InstrumentKind(kind.code(), kind.title(), kind.unit(), kind.calibrated()))
                        .toList(),
                streams.stream()
                        .flatMap(history -> instrument(history, first).stream())
                        .toList(),
                latest(StageDefined.class, said -> said.stage().code(), StageDefined::stage),
                latest(StationDefined.class, said -> said.station().code(), StationDefined::station),
                joints(),
                components(),
                calibrations(),
                sheets().values().stream().map(Released::sheet).toList(),
                routes().values().stream().map(RouteReleased::route).toList(),
                plans().values().stream()
                        .map(said -> PlanFile.lines(said.plan()))
                        .toList(),
                outlines().values().stream().map(OutlineReleased::outline).toList(),
                locks(false));
    }

    /** What the works itself has ended: people who left, competences withdrawn, locks retired. */
    WorksFiles ended() {
        return new WorksFiles(
                ownLine(),
                people().filter(Person::left).map(this::line).toList(),
                competences(firstDay("UTC"), true),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                locks(true));
    }

    /** What standing files can say without naming anybody who left: their locks stay out with them. */
    WorksFiles givenOut() {
        WorksFiles standing = standing();
        Set<String> present = new HashSet<>();
        standing.people().forEach(person -> present.add(person.number()));
        return standing.withLocks(standing.locks().stream()
                .filter(lock -> lock.owner().map(present::contains).orElse(true))
                .toList());
    }

    Map<String, Released> sheets() {
        var sheets = new LinkedHashMap<String, Released>();
        streams.forEach(history -> history.last(Released.class)
                .ifPresent(said -> sheets.put(said.sheet().code(), said)));
        return sheets;
    }

    Map<String, RouteReleased> routes() {
        return byCode(RouteReleased.class, said -> said.route().code());
    }

    Map<String, PlanReleased> plans() {
        return byCode(PlanReleased.class, said -> said.plan().code());
    }

    Map<String, OutlineReleased> outlines() {
        return byCode(OutlineReleased.class, said -> said.outline().vehicleKind());
    }

    List<Joint> joints() {
        return works.last(JointsReleased.class).map(JointsReleased::joints).orElse(List.of());
    }

    List<Component> components() {
        return ComponentLibrary.of(works).components();
    }

    List<Calibration> calibrations() {
        return CalibrationLibrary.of(works).calibrations();
    }

    int calibrationsRevision() {
        return CalibrationLibrary.of(works).revision();
    }

    int componentsRevision() {
        return ComponentLibrary.of(works).revision();
    }

    int jointsRevision() {
        return works.last(JointsReleased.class).map(JointsReleased::revision).orElse(0);
    }

    private Stream<Person> people() {
        return streams.stream()
                .filter(history -> history.last(WorksSaying.Engaged.class).isPresent())
                .map(Person::of);
    }

    private Lines.Works ownLine() {
        Optional<WorksSaying.Named> named = works.last(WorksSaying.Named.class);
        return new Lines.Works(
                works.last(WorksSaying.CodeSet.class)
                        .map(WorksSaying.CodeSet::code)
                        .orElse(""),
                named.map(WorksSaying.Named::title).orElse(""),
                named.map(WorksSaying.Named::zone).orElse("UTC"),
                works.last(WorksSaying.IsolatorMayIssueSet.class)
                        .map(WorksSaying.IsolatorMayIssueSet::allowed)
                        .orElse(false),
                works.last(WorksSaying.ShiftsSet.class).stream()
                        .flatMap(set -> set.shifts().stream())
                        .map(Lines.ShiftLine::of)
                        .toList(),
                works.last(WorksSaying.BreaksSet.class).stream()
                        .flatMap(set -> set.breaks().stream())
                        .map(Lines.BreakLine::of)
                        .toList(),
                works.last(WorksSaying.HolidaysSet.class).stream()
                        .flatMap(set -> set.days().stream())
                        .map(LocalDate::toString)
                        .toList(),
                works.last(WorksSaying.AppointmentsSet.class).stream()
                        .flatMap(set -> set.appointments().stream())
                        .map(Lines.AppointmentLine::of)
                        .toList(),
                works.last(WorksSaying.TaktSet.class).map(WorksSaying.TaktSet::minutes),
                works.last(WorksSaying.OperatorsListed.class).stream()
                        .flatMap(listed -> listed.operators().stream())
                        .map(operator -> new Lines.Operator(operator.code(), operator.title()))
                        .toList());
    }

    /** A person whose name was deleted goes by the number. */
    private Lines.Person line(Person person) {
        Optional<KnownName> known = Optional.ofNullable(names.get(person.number()));
        return new Lines.Person(
                person.number(),
                known.flatMap(KnownName::user).orElse(person.number()),
                known.flatMap(KnownName::fullName).orElse(person.number()),
                person.roles().stream().map(Role::word).toList());
    }

    private List<Lines.Competence> competences(LocalDate first, boolean withdrawn) {
        List<Lines.Competence> lines = new ArrayList<>();
        for (History history : streams) {
            Person person = Person.of(history);
            var given = new LinkedHashMap<String, WorksSaying.CompetenceGiven>();
            said(history, WorksSaying.CompetenceGiven.class).forEach(said -> given.put(said.competence(), said));
            given.values().stream()
                    .filter(said -> (person.left()
                                    || person.competences()
                                            .get(said.competence())
                                            .withdrawn())
                            == withdrawn)
                    .map(said -> new Lines.Competence(
                            person.number(),
                            said.competence(),
                            said.level(),
                            days(first, said.validFrom()),
                            days(first, said.validTo()),
                            said.evidence()))
                    .forEach(lines::add);
        }
        return lines;
    }

    private static Optional<Lines.Instrument> instrument(History history, LocalDate first) {
        // A registration says the whole anew, so a calibration from before it no longer counts.
        List<Entry> since = new ArrayList<>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof WorksSaying.InstrumentRegistered) {
                since.clear();
            }
            since.add(entry);
        }
        Optional<WorksSaying.Calibrated> last = since.stream()
                .filter(entry -> entry.saying() instanceof WorksSaying.Calibrated)
                .map(entry -> (WorksSaying.Calibrated) entry.saying())
                .filter(said -> said.due().isPresent())
                .reduce((former, latter) -> latter);
        return Instrument.of(history)
                .map(known -> new Lines.Instrument(
                        known.code(),
                        known.kind(),
                        known.title(),
                        known.unit(),
                        known.lower(),
                        known.upper(),
                        known.accuracyPercent(),
                        last.map(said -> days(first, said.on())),
                        last.map(said -> days(first, said.due().orElseThrow())),
                        last.map(WorksSaying.Calibrated::certificate),
                        known.withdrawnBecause()));
    }

    private List<Lines.LockItem> locks(boolean retired) {
        return Register.of(works).items().stream()
                .filter(item -> item.retired() == retired)
                .map(item -> new Lines.LockItem(item.number(), item.sort(), item.owner()))
                .toList();
    }

    private static int days(LocalDate first, LocalDate day) {
        return Math.toIntExact(ChronoUnit.DAYS.between(first, day));
    }

    private <S extends Saying, T> List<T> latest(Class<S> kind, Function<S, String> code, Function<S, T> thing) {
        return byCode(kind, code).values().stream().map(thing).toList();
    }

    /** The last of each code, in the order in which the codes first came. */
    private <S extends Saying> Map<String, S> byCode(Class<S> kind, Function<S, String> code) {
        var last = new LinkedHashMap<String, S>();
        all(kind).forEach(said -> last.put(code.apply(said), said));
        return last;
    }

    private <S extends Saying> Stream<S> all(Class<S> kind) {
        return said(works, kind);
    }

    private static <S extends Saying> Stream<S> said(History history, Class<S> kind) {
        return history.saying(kind).map(entry -> kind.cast(entry.saying()));
    }
}
