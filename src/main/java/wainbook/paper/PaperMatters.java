package wainbook.paper;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.page.Words;
import wainbook.paper.PaperForm.State;
import wainbook.paper.PaperSaying.Transcribed;
import wainbook.works.Role;

/** Forms that are in use or wait to be compared: paper is not the record, and until it is typed in nobody sees it. */
@ApplicationScoped
class PaperMatters implements Matters {

    private final Ledger ledger;

    PaperMatters(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return PaperForms.of(ledger.history(Subject.works())).all().stream()
                .filter(form -> form.state() == State.IN_USE || form.state() == State.WAITING)
                .flatMap(form -> vehicles(form).map(vehicle -> matter(form, vehicle)))
                .toList();
    }

    private static Stream<String> vehicles(PaperForm form) {
        Stream<String> last = form.last().stream().map(entry -> ((Transcribed) entry.saying()).vehicle());
        return Stream.concat(form.usedAt().stream(), last).distinct();
    }

    private static OpenMatter matter(PaperForm form, String vehicle) {
        boolean bars = form.sort() == Sort.ISOLATION;
        return new OpenMatter(
                OpenMatter.Sort.PAPER,
                vehicle,
                form.code(),
                Optional.empty(),
                Words.of(form.state() == State.WAITING ? "paper.matterWaits" : "paper.matterInUse", word(form)),
                form.last().orElse(form.printed()).moment().at(),
                List.of(Owner.of(Role.TEAM_LEADER)),
                Due.open(),
                bars ? Words.of("paper.bars") : "",
                "/paper/" + form.code());
    }

    private static String word(PaperForm form) {
        return Words.of("paper.sort." + form.sort().name());
    }
}
