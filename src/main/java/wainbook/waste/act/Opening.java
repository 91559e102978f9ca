package wainbook.waste.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
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
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying.Assessment;
import wainbook.waste.WasteSaying.ContainerOpened;
import wainbook.waste.WasteSaying.Measure;

/** Opens a container for one entry of the List of Waste, under a label that no other ever had. */
@ApplicationScoped
public class Opening {

    private static final int MOST_DAYS = 3650;

    public record ToOpen(
            UUID id,
            String label,
            String code,
            BigDecimal capacity,
            Measure measure,
            String place,
            boolean bund,
            boolean lid,
            Optional<Assessment> assessment,
            int askAfterDays)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Labels.subject(label));
        }

        @Override
        public Class<? extends Saying> says() {
            return ContainerOpened.class;
        }
    }

    private final Ledger ledger;

    Opening(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> open(ToOpen asked, Actor actor) {
        if (!Labels.fits(asked.label())) {
            return Outcome.refused(
                    Reason.of("waste.labelFault", Reason.WORKS_RULE).liftedAt("#number"));
        }
        Subject subject = Labels.subject(asked.label());
        return ledger.write(asked, actor, reading -> {
            List<Reason> against = new ArrayList<>(against(asked));
            if (Container.of(reading.of(subject)).isPresent()) {
                against.add(Reason.of("waste.labelTaken", Reason.WORKS_RULE, asked.label())
                        .liftedAt("#number"));
            }
            return against.isEmpty() ? Decision.say(subject, said(asked)) : Decision.refuse(against);
        });
    }

    private static ContainerOpened said(ToOpen asked) {
        return new ContainerOpened(
                ListOfWaste.ours().find(asked.code()).orElseThrow().code(),
                asked.capacity(),
                asked.measure(),
                asked.place(),
                asked.bund(),
                asked.lid(),
                asked.assessment(),
                asked.askAfterDays());
    }

    static List<Reason> against(ToOpen asked) {
        var against = new ArrayList<Reason>();
        Optional<ListOfWaste.Row> row = ListOfWaste.ours().find(asked.code());
        if (row.isEmpty()) {
            against.add(Reason.of("waste.codeUnknown", "Decision 2000/532/EC", asked.code())
                    .liftedAt("#code"));
        }
        Typed.mass(asked.capacity(), "capacity").ifPresent(against::add);
        Typed.words(asked.place(), "place").ifPresent(against::add);
        if (asked.place().length() > 80) {
            against.add(Reason.of("waste.tooLong", Reason.WORKS_RULE, 80).liftedAt("#place"));
        }
        if (asked.askAfterDays() < 1 || asked.askAfterDays() > MOST_DAYS) {
            against.add(
                    Reason.of("waste.daysFault", Reason.WORKS_RULE, MOST_DAYS).liftedAt("#askAfterDays"));
        }
        row.ifPresent(known -> against.addAll(against(asked, known)));
        return against;
    }

    private static List<Reason> against(ToOpen asked, ListOfWaste.Row row) {
        var against = new ArrayList<Reason>();
        if (row.liquid() && !asked.bund()) {
            against.add(Reason.of("waste.bundMissing", Reason.PRACTICE).liftedAt("#bund"));
        }
        if ((row.liquid() || row.hazardous()) && !asked.lid()) {
            against.add(Reason.of("waste.lidMissing", Reason.PRACTICE).liftedAt("#lid"));
        }
        if (row.kind() == ListOfWaste.Kind.MIRROR) {
            Typed.words(asked.assessment().map(Assessment::by).orElse(""), "assessedBy")
                    .map(none -> Reason.of("waste.assessorMissing", "Decision 2000/532/EC", row.code())
                            .liftedAt("#assessedBy"))
                    .ifPresent(against::add);
            Typed.words(asked.assessment().map(Assessment::basis).orElse(""), "assessedOn")
                    .map(none -> Reason.of("waste.basisMissing", "Decision 2000/532/EC", row.code())
                            .liftedAt("#assessedOn"))
                    .ifPresent(against::add);
        }
        return against;
    }
}
