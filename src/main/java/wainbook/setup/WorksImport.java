package wainbook.setup;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.CheckSheet;
import wainbook.process.Draft;
import wainbook.process.Known;
import wainbook.process.ProcessSaying;
import wainbook.process.Stage;
import wainbook.process.VehicleFacts;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.works.WorksSaying;

/** Writes what the files of a works say into an empty ledger. Its entries are said by {@code setup}. */
@ApplicationScoped
class WorksImport {

    private static final String WHO = "setup";

    /** A stream that the import begins; its id follows from the subject, so that a broken start can be begun again. */
    record Beginning(UUID id, Subject subject) implements Asked {
        static Beginning of(Subject subject) {
            return new Beginning(
                    UUID.nameUUIDFromBytes(("first start " + subject).getBytes(StandardCharsets.UTF_8)), subject);
        }

        @Override
        public List<Subject> writes() {
            return List.of(subject);
        }

        @Override
        public Class<? extends Saying> says() {
            return Saying.class;
        }
    }

    private final Ledger ledger;
    private final Clock clock;
    private final PeopleImport people;

    WorksImport(Ledger ledger, Clock clock, PeopleImport people) {
        this.ledger = ledger;
        this.clock = clock;
        this.people = people;
    }

    /** Takes it all; {@code password} becomes everybody's, so this is for the demo works alone. */
    void take(WorksFiles files, String password) {
        LocalDate today =
                LocalDate.ofInstant(clock.instant(), ZoneId.of(files.works().zone()));
        people.take(files, password, today, this::say);
        files.instruments()
                .forEach(instrument -> say(Subject.instrument(instrument.code()), instrument(instrument, today)));
        files.sheets().forEach(sheet -> say(Subject.checkSheet(sheet.code()), List.of(released(sheet, files))));
        say(Subject.works(), works(files));
    }

    private static List<Saying> works(WorksFiles files) {
        var sayings = new ArrayList<Saying>();
        sayings.add(new WorksSaying.Named(files.works().title(), files.works().zone()));
        sayings.add(new WorksSaying.ShiftsSet(
                files.works().shifts().stream().map(Lines.ShiftLine::shift).toList()));
        files.works().taktMinutes().ifPresent(minutes -> sayings.add(new WorksSaying.TaktSet(minutes)));
        sayings.add(new WorksSaying.IsolatorMayIssueSet(files.works().isolatorMayIssue()));
        files.stages().forEach(stage -> sayings.add(new ProcessSaying.StageDefined(stage)));
        files.stations().forEach(station -> sayings.add(new ProcessSaying.StationDefined(station)));
        sayings.add(new ProcessSaying.JointsReleased(files.joints(), 1));
        files.routes().forEach(route -> sayings.add(new ProcessSaying.RouteReleased(route, 1)));
        files.isolationPlans().forEach(plan -> sayings.add(new ProcessSaying.PlanReleased(PlanFile.plan(plan))));
        files.locks()
                .forEach(item ->
                        sayings.add(new IsolationSaying.ItemRegistered(item.number(), item.sort(), item.owner())));
        return sayings;
    }

    private static List<Saying> instrument(Lines.Instrument line, LocalDate today) {
        var sayings = new ArrayList<Saying>();
        sayings.add(new WorksSaying.InstrumentRegistered(
                line.kind(), line.title(), line.unit(), line.lower(), line.upper(), line.accuracyPercent()));
        sayings.add(new WorksSaying.Calibrated(
                today.plusDays(line.calibratedDay()), today.plusDays(line.dueDay()), line.certificate()));
        line.withdrawn().ifPresent(why -> sayings.add(new WorksSaying.InstrumentWithdrawn(why)));
        return sayings;
    }

    private static ProcessSaying.Released released(CheckSheet sheet, WorksFiles files) {
        var stages = new HashSet<String>();
        files.stages().stream().map(Stage::code).forEach(stages::add);
        var kinds = new HashSet<String>();
        files.instrumentKinds().stream().map(Lines.InstrumentKind::code).forEach(kinds::add);
        var known = new Known(files.joints(), stages, kinds, VehicleFacts.PREDICATES);
        return new Draft(sheet).release(known, Optional.empty()).fold(released -> released, reasons -> {
            throw new IllegalStateException("check sheet " + sheet.code() + " cannot be released: " + reasons);
        });
    }

    private Entry say(Subject subject, List<? extends Saying> sayings) {
        return ledger.write(Beginning.of(subject), Actor.of(WHO, clock), reading -> {
                    Decision decision = Decision.say(subject, sayings.get(0));
                    for (Saying further : sayings.subList(1, sayings.size())) {
                        decision = decision.andSay(subject, further);
                    }
                    return decision;
                })
                .fold(entry -> entry, reasons -> {
                    throw new IllegalStateException(subject + " could not be written: " + reasons);
                });
    }
}
