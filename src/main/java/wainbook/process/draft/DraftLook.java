package wainbook.process.draft;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.act.Moment;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.VehicleFacts;
import wainbook.process.joint.Joint;
import wainbook.process.rule.Known;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckSheet;
import wainbook.works.Person;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.InstrumentRule;
import wainbook.works.shift.WorksDay;

/** Brings together what a draft is judged from. */
@ApplicationScoped
public class DraftLook {

    private final Ledger ledger;
    private final Releases releases;
    private final InWorks inWorks;
    private final WorksDay day;

    DraftLook(Ledger ledger, Releases releases, InWorks inWorks, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.inWorks = inWorks;
        this.day = day;
    }

    public Revisions revisions(About about) {
        return Revisions.of(ledger.history(about.subject()), about);
    }

    /** The rules of one paper for one person at one time. */
    public DraftRules rules(History history, About about, Moment moment) {
        return new DraftRules(
                Revisions.of(history, about),
                surroundings(day.of(moment.at())),
                moment.who(),
                Person.of(ledger.history(Subject.person(moment.who()))).roles());
    }

    private Surroundings surroundings(LocalDate today) {
        List<Stage> stages = releases.stages();
        return new Surroundings(
                new Known(
                        releases.joints(),
                        stages.stream().map(Stage::code).collect(Collectors.toSet()),
                        instrumentKinds(),
                        VehicleFacts.PREDICATES),
                releases.sheets(),
                stages,
                releases.stations(),
                releases.routes(),
                releases.plans(),
                inWorks.vehicles(),
                kind -> fit(kind, today));
    }

    private List<Instrument> fit(String kind, LocalDate today) {
        return InstrumentRow.ofKind(kind).stream()
                .flatMap(row -> Instrument.of(ledger.history(Subject.instrument(row.code))).stream())
                .filter(tool -> InstrumentRule.against(Optional.of(tool), kind, List.of(), today)
                        .isEmpty())
                .toList();
    }

    /**
     * A kind of instrument is known by an instrument on the register, or by what is in force: a works may have begun with
     * kinds of which it has none on the register yet.
     */
    private Set<String> instrumentKinds() {
        var kinds = new HashSet<String>();
        InstrumentRow.register().forEach(row -> kinds.add(row.kind));
        releases.joints().stream().map(Joint::toolKind).forEach(kinds::add);
        releases.sheets().stream()
                .map(CheckSheet::items)
                .flatMap(items -> items.stream())
                .map(item -> item.asks() instanceof Ask.Measure measure
                        ? measure.instrumentKind()
                        : Optional.<String>empty())
                .flatMap(Optional::stream)
                .forEach(kinds::add);
        return kinds;
    }
}
