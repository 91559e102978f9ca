package wainbook.waste.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
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
import wainbook.waste.WasteSaying.ReturnNoted;
import wainbook.works.shift.WorksDay;

/** Notes what came back from the site that received a container: part E, or its quarterly return. */
@ApplicationScoped
public class Returning {

    public record ToReturn(
            UUID id,
            String label,
            LocalDate on,
            String reference,
            BigDecimal recycledKg,
            BigDecimal energyKg,
            BigDecimal disposedKg)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Labels.subject(label));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReturnNoted.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;

    Returning(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Outcome<Entry> note(ToReturn asked, Actor actor) {
        Subject subject = Labels.subject(asked.label());
        return ledger.write(asked, actor, reading -> {
            Optional<Container> container = Container.of(reading.of(subject));
            List<Reason> against =
                    against(container, asked, day.of(reading.moment().at()));
            return against.isEmpty()
                    ? Decision.say(
                            subject,
                            new ReturnNoted(
                                    asked.on(),
                                    asked.reference(),
                                    asked.recycledKg(),
                                    asked.energyKg(),
                                    asked.disposedKg()))
                    : Decision.refuse(against);
        });
    }

    static List<Reason> against(Optional<Container> container, ToReturn asked, LocalDate today) {
        Optional<Collected> left = container.flatMap(Container::collected);
        if (left.isEmpty()) {
            return List.of(
                    Reason.of("waste.notGone", Reason.WORKS_RULE, asked.label()).liftedAt(Labels.path(asked.label())));
        }
        var against = new ArrayList<Reason>();
        Typed.words(asked.reference(), "reference").ifPresent(against::add);
        if (asked.on().isBefore(left.get().note().on()) || asked.on().isAfter(today)) {
            against.add(Reason.of(
                            "waste.returnDay",
                            Reason.WORKS_RULE,
                            left.get().note().on(),
                            today)
                    .liftedAt("#on"));
        }
        for (BigDecimal kg : List.of(asked.recycledKg(), asked.energyKg(), asked.disposedKg())) {
            if (kg.signum() < 0) {
                against.add(Reason.of("waste.returnMass", Reason.WORKS_RULE).liftedAt("#recycledKg"));
            }
        }
        BigDecimal whole = asked.recycledKg().add(asked.energyKg()).add(asked.disposedKg());
        if (whole.compareTo(left.get().note().massKg()) != 0) {
            against.add(Reason.of(
                            "waste.returnSum",
                            Reason.WORKS_RULE,
                            whole.toPlainString(),
                            left.get().note().massKg().toPlainString())
                    .liftedAt("#recycledKg"));
        }
        return against;
    }
}
