package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.HandoverRecord;
import wainbook.handover.record.OutsideNames;
import wainbook.handover.record.OutsideNames.Named;
import wainbook.handover.record.RecordSaying.Instructed;
import wainbook.handover.record.RecordSaying.InstructionOmitted;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.Wordlists;
import wainbook.ledger.Asked;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;

/** Who of the operator was instructed, by whom and on what; or why nobody was. */
@ApplicationScoped
public class Instructing {

    private static final int MOST_PEOPLE = 40;
    private static final int LONGEST_AGO_YEARS = 1;

    /**
     * @param driverNames lie outside the ledger, as do {@code workshopNames}
     * @param by the number of the person of the works who instructed
     */
    public record ToInstruct(
            UUID id,
            String order,
            List<String> driverNames,
            List<String> workshopNames,
            String by,
            List<String> topics,
            LocalDate on)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Instructed.class;
        }

        private List<Named> people() {
            return Stream.concat(driverNames.stream(), workshopNames.stream())
                    .map(name -> new Named(name, ""))
                    .toList();
        }
    }

    public record ToOmit(UUID id, String order, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return InstructionOmitted.class;
        }
    }

    private final AtBay bays;
    private final OutsideNames names;

    Instructing(AtBay bays, OutsideNames names) {
        this.bays = bays;
        this.names = names;
    }

    public Outcome<Entry> instruct(ToInstruct asked, Actor actor) {
        List<Named> people = asked.people();
        if (people.isEmpty()
                || people.size() > MOST_PEOPLE
                || people.stream()
                        .anyMatch(named ->
                                named.fullName().isBlank() || named.fullName().length() > Typed.LONGEST)) {
            return Outcome.refused(Reason.of("handover.recordPeople", Reason.PRACTICE, MOST_PEOPLE, Typed.LONGEST)
                    .liftedAt("#drivers"));
        }
        List<String> hashes = names.keep(asked.id(), asked.order(), people);
        Outcome<Entry> outcome = bays.write(
                asked, actor, bay -> bay.say(against(asked, bay.today()), () -> said(asked, hashes, bay.record())));
        if (!outcome.reasons().isEmpty()) {
            names.forget(asked.id(), bays.history(asked.order()));
        }
        return outcome;
    }

    private List<Reason> against(ToInstruct asked, LocalDate today) {
        var against = new ArrayList<Reason>();
        if (bays.person(asked.by()).isEmpty()) {
            against.add(Reason.of("handover.recordNobody", Reason.WORKS_RULE).liftedAt("#by"));
        }
        if (asked.topics().isEmpty()
                || asked.topics().size() > Wordlists.MOST
                || asked.topics().stream().anyMatch(topic -> topic.isBlank() || topic.length() > Wordlists.LONGEST)) {
            against.add(Reason.of("handover.recordTopicsFault", Reason.PRACTICE, Wordlists.LONGEST)
                    .liftedAt("#topics"));
        }
        Typed.day(asked.on(), today.minusYears(LONGEST_AGO_YEARS), today, "on").ifPresent(against::add);
        return against;
    }

    private static Instructed said(ToInstruct asked, List<String> hashes, HandoverRecord record) {
        int drivers = asked.driverNames().size();
        return new Instructed(
                record.allInstructions().size() + 1,
                outsiders(record, hashes, 0, drivers),
                outsiders(record, hashes, drivers, hashes.size()),
                asked.by(),
                asked.topics(),
                asked.on());
    }

    private static List<Outsider> outsiders(HandoverRecord record, List<String> hashes, int from, int to) {
        return IntStream.range(from, to)
                .mapToObj(place -> record.outsider(place, hashes.get(place)))
                .toList();
    }

    public Outcome<Entry> omit(ToOmit asked, Actor actor) {
        return bays.write(asked, actor, bay -> {
            if (!bay.record().instructions().isEmpty()) {
                return wainbook.ledger.Decision.refuse(
                        Reason.of("handover.recordInstructedAlready", Reason.WORKS_RULE, asked.order())
                                .liftedAt(bay.rules().path() + "#instruction"));
            }
            return bay.say(
                    Typed.text(asked.reason(), "whyNot").stream().toList(),
                    () -> new InstructionOmitted(asked.reason()));
        });
    }
}
