package wainbook.waste.act;

import jakarta.enterprise.context.ApplicationScoped;
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
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.waste.WasteSaying.EngineMadeUnusable;
import wainbook.works.shift.WorksDay;

/** Records that an engine was made unusable, with photographs before and after. Only where the order says that it is destroyed. */
@ApplicationScoped
public class EngineFate {

    public static final String FACT = "engine_fate";
    public static final String DESTROYED = "destroyed";

    /** @param before and {@code after}: fingerprints of photographs handed in before */
    public record ToRecord(
            UUID id,
            String order,
            String serial,
            String method,
            LocalDate on,
            String before,
            String after,
            Optional<String> ticket,
            Optional<String> permit)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Numbers.subject(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return EngineMadeUnusable.class;
        }
    }

    private final Ledger ledger;
    private final EvidenceFiles files;
    private final WorksDay day;

    EngineFate(Ledger ledger, EvidenceFiles files, WorksDay day) {
        this.ledger = ledger;
        this.files = files;
        this.day = day;
    }

    public Outcome<Entry> record(ToRecord asked, Actor actor) {
        Subject subject = Numbers.subject(asked.order());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(against(reading.of(subject)));
            Optional<EvidenceFile> before = photograph(asked.before(), "before", against);
            Optional<EvidenceFile> after = photograph(asked.after(), "after", against);
            Typed.words(asked.serial(), "serial").ifPresent(against::add);
            Typed.words(asked.method(), "method").ifPresent(against::add);
            Typed.maybe(asked.ticket(), "ticket").ifPresent(against::add);
            Typed.maybe(asked.permit(), "permit").ifPresent(against::add);
            LocalDate today = day.of(reading.moment().at());
            if (asked.on().isAfter(today)) {
                against.add(
                        Reason.of("waste.dayAhead", Reason.WORKS_RULE, today).liftedAt("#on"));
            }
            if (!asked.before().isBlank() && asked.before().equals(asked.after())) {
                against.add(Reason.of("waste.samePhotograph", Reason.WORKS_RULE).liftedAt("#after"));
            }
            return against.isEmpty()
                    ? Decision.say(
                            subject,
                            new EngineMadeUnusable(
                                    asked.serial(),
                                    asked.method(),
                                    asked.on(),
                                    before.orElseThrow(),
                                    after.orElseThrow(),
                                    asked.ticket(),
                                    asked.permit()))
                    : Decision.refuse(against);
        });
    }

    private Optional<EvidenceFile> photograph(String sha256, String field, List<Reason> against) {
        Optional<EvidenceFile> file = Optional.of(sha256)
                .filter(text -> text.matches("[0-9a-f]{64}"))
                .flatMap(files::file)
                .filter(known -> known.mediaType().startsWith("image/"));
        if (file.isEmpty()) {
            against.add(Reason.of("waste.photographMissing", Reason.PRACTICE).liftedAt("#" + field));
        }
        return file;
    }

    /** What stands against it whatever is typed; asked before the form is drawn. */
    public List<Reason> against(History history) {
        Optional<WorkOrder> order = WorkOrder.of(history);
        String number = history.subject().code();
        if (order.isEmpty()) {
            return List.of(Reason.of("order.notFound", Reason.WORKS_RULE, number));
        }
        return order.filter(known -> DESTROYED.equals(known.facts().get(FACT))).isEmpty()
                ? List.of(Reason.of("waste.engineNotDestroyed", Reason.WORKS_RULE, number)
                        .liftedAt("/orders/" + number + "/facts?fact=" + FACT))
                : List.of();
    }
}
