package wainbook.process.draft;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Ask;
import wainbook.process.CheckSheet;
import wainbook.process.Joint;
import wainbook.process.Known;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.VehicleFacts;
import wainbook.works.InstrumentRow;
import wainbook.works.Person;

/** Brings together what a draft is judged from. */
@ApplicationScoped
public class DraftLook {

    private final Ledger ledger;
    private final Releases releases;
    private final InWorks inWorks;

    DraftLook(Ledger ledger, Releases releases, InWorks inWorks) {
        this.ledger = ledger;
        this.releases = releases;
        this.inWorks = inWorks;
    }

    public Revisions revisions(About about) {
        return Revisions.of(ledger.history(about.subject()), about);
    }

    /** The rules of one paper for one person. */
    public DraftRules rules(History history, About about, String who) {
        return new DraftRules(
                Revisions.of(history, about),
                surroundings(),
                who,
                Person.of(ledger.history(Subject.person(who))).roles());
    }

    public Surroundings surroundings() {
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
                inWorks.vehicles());
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
