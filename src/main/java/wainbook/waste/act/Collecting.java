package wainbook.waste.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.Share;
import wainbook.waste.note.Apportionment;
import wainbook.waste.note.Note;
import wainbook.works.shift.WorksDay;

/** A container leaves under a note of its own; the note's mass is apportioned to what was put in. */
@ApplicationScoped
public class Collecting {

    /**
     * @param seen the container's number when the note was drawn up: what was put in since is on no note that somebody read
     * @param weighbridgeKg where the load was weighed; else the note takes what the works counted
     */
    public record ToCollect(
            UUID id,
            String label,
            Optional<Long> seen,
            String code,
            String producer,
            String sic,
            String process,
            String components,
            String hazards,
            String packing,
            String transport,
            Optional<BigDecimal> weighbridgeKg,
            Optional<String> weighbridge,
            String carrier,
            String registration,
            LocalDate registrationSeenOn,
            String vehicle,
            String site,
            String permit,
            LocalDate permitSeenOn)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Labels.subject(label));
        }

        @Override
        public Class<? extends Saying> says() {
            return Collected.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;

    Collecting(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Outcome<Entry> collect(ToCollect asked, Actor actor) {
        Subject subject = Labels.subject(asked.label());
        return ledger.write(asked, actor, reading -> {
            Optional<Container> container = Container.of(reading.of(subject));
            LocalDate today = day.of(reading.moment().at());
            var against = new ArrayList<>(CollectRule.standing(container, asked.label()));
            container.ifPresent(known -> against.addAll(CollectRule.against(known, asked, today)));
            return against.isEmpty()
                    ? Decision.say(subject, said(container.orElseThrow(), asked, reading.moment(), today))
                    : Decision.refuse(against);
        });
    }

    /** What stands against any note for it; asked before a form is drawn. */
    public List<Reason> against(Optional<Container> container, String label) {
        return CollectRule.standing(container, label);
    }

    static Collected said(Container container, ToCollect asked, Moment moment, LocalDate today) {
        BigDecimal counted = container.massKg();
        BigDecimal mass = asked.weighbridgeKg().orElse(counted);
        var note = new Note(
                Note.Sort.of(container.row().hazardous()),
                asked.code(),
                today,
                asked.producer(),
                asked.sic(),
                asked.process(),
                container.row().code(),
                container.row().title(),
                asked.components(),
                asked.hazards(),
                asked.packing(),
                asked.transport(),
                mass,
                asked.weighbridge(),
                new Note.Checked(asked.carrier(), asked.registration(), asked.registrationSeenOn(), moment.who()),
                asked.vehicle(),
                new Note.Checked(asked.site(), asked.permit(), asked.permitSeenOn(), moment.who()));
        return new Collected(note, counted, shares(container.inside(), mass));
    }

    static List<Share> shares(List<PutIn> inside, BigDecimal noteKg) {
        List<BigDecimal> apportioned =
                Apportionment.of(inside.stream().map(PutIn::massKg).toList(), noteKg);
        var shares = new ArrayList<Share>();
        for (int i = 0; i < inside.size(); i++) {
            PutIn put = inside.get(i);
            shares.add(new Share(put.order(), put.thing(), put.what(), put.massKg(), apportioned.get(i)));
        }
        return shares;
    }
}
