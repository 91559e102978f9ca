package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.OutsideNames;
import wainbook.handover.record.OutsideNames.Named;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.ledger.Asked;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;

/** Snags: agreed with the operator at handover, closed when they are put right, be it years later. */
@ApplicationScoped
public class Snagging {

    private static final int LONGEST_DUE_YEARS = 3;

    /**
     * @param withName of the operator's person, which lies outside the ledger
     * @param owner the number of who does it for the works; empty where the operator does it
     */
    public record ToAgree(
            UUID id,
            String order,
            String defect,
            String place,
            String withName,
            Optional<String> owner,
            String remedy,
            LocalDate dueOn)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return SnagAgreed.class;
        }
    }

    /** @param sha256 of a photograph handed in before */
    public record ToClose(UUID id, String order, int snag, String done, Optional<String> sha256) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return SnagClosed.class;
        }
    }

    private final AtBay bays;
    private final Photographs photographs;
    private final OutsideNames names;

    Snagging(AtBay bays, Photographs photographs, OutsideNames names) {
        this.bays = bays;
        this.photographs = photographs;
        this.names = names;
    }

    public Outcome<Entry> agree(ToAgree asked, Actor actor) {
        Optional<Reason> nameless = Typed.words(asked.withName(), "withName");
        if (nameless.isPresent()) {
            return Outcome.refused(nameless.get());
        }
        String hash = names.keep(asked.id(), asked.order(), List.of(new Named(asked.withName(), "")))
                .get(0);
        Outcome<Entry> outcome = bays.write(
                asked,
                actor,
                bay -> bay.say(
                        against(asked, bay.today()),
                        () -> new SnagAgreed(
                                bay.record().allSnags().size() + 1,
                                asked.defect(),
                                asked.place(),
                                bay.record().outsider(0, hash),
                                asked.owner(),
                                asked.remedy(),
                                asked.dueOn())));
        if (!outcome.reasons().isEmpty()) {
            names.forget(asked.id(), bays.history(asked.order()));
        }
        return outcome;
    }

    private List<Reason> against(ToAgree asked, LocalDate today) {
        var against = new ArrayList<Reason>();
        Typed.words(asked.defect(), "defect").ifPresent(against::add);
        Typed.words(asked.place(), "snagPlace").ifPresent(against::add);
        Typed.words(asked.remedy(), "remedy").ifPresent(against::add);
        Typed.day(asked.dueOn(), today, today.plusYears(LONGEST_DUE_YEARS), "dueOn")
                .ifPresent(against::add);
        if (asked.owner().isPresent() && asked.owner().flatMap(bays::person).isEmpty()) {
            against.add(Reason.of("handover.recordNobody", Reason.WORKS_RULE).liftedAt("#owner"));
        }
        return against;
    }

    public Outcome<Entry> close(ToClose asked, Actor actor) {
        return bays.always(asked, actor, bay -> {
            if (!bay.record().stands(Sort.SNAG, asked.snag())) {
                return wainbook.ledger.Decision.refuse(
                        Reason.of("handover.recordNoSnag", Reason.WORKS_RULE, asked.snag(), asked.order())
                                .liftedAt(bay.rules().path() + "#snags"));
            }
            var against = new ArrayList<Reason>();
            Typed.text(asked.done(), "done").ifPresent(against::add);
            Optional<EvidenceFile> photograph = asked.sha256().flatMap(photographs::of);
            if (asked.sha256().isPresent() && photograph.isEmpty()) {
                against.add(Reason.of("handover.recordPhotographMissing", Reason.PRACTICE)
                        .liftedAt("#closingPhotograph"));
            }
            return bay.say(against, () -> new SnagClosed(asked.snag(), asked.done(), photograph));
        });
    }
}
