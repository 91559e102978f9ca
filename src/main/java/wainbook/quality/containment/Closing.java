package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.DoubtClosed;
import wainbook.quality.QualitySaying.Touched;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;

/** Closes a containment, once every reading is decided. */
@ApplicationScoped
public class Closing {

    /** What is asked. */
    public record ToClose(UUID id, Subject stream, String containment, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(stream);
        }

        @Override
        public Class<? extends Saying> says() {
            return DoubtClosed.class;
        }
    }

    private static final int NAMED = 5;

    private final Ledger ledger;
    private final Containments containments;

    Closing(Ledger ledger, Containments containments) {
        this.ledger = ledger;
        this.containments = containments;
    }

    public Outcome<Entry> close(ToClose asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Optional<Containment> known = Containment.of(reading.of(asked.stream())).stream()
                    .filter(one -> one.code().equals(asked.containment()))
                    .findFirst();
            List<Reason> against = known.map(this::against)
                    .orElseGet(() -> List.of(Reason.of("quality.notFound", Reason.WORKS_RULE, asked.containment())));
            var all = new ArrayList<>(against);
            if (asked.reason().isBlank() || asked.reason().length() > 2000) {
                all.add(Reason.of("quality.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
            }
            return all.isEmpty()
                    ? Decision.say(asked.stream(), new DoubtClosed(asked.containment(), asked.reason()))
                    : Decision.refuse(all);
        });
    }

    /** What stands against closing it. Asked before the page is drawn, too. */
    public List<Reason> against(Containment containment) {
        var against = new ArrayList<Reason>();
        String code = containment.code();
        if (!containment.isOpen()) {
            against.add(Reason.of("quality.closedAlready", Reason.WORKS_RULE, code));
        }
        List<String> untold = containments.untold(containment);
        if (!untold.isEmpty()) {
            against.add(Reason.of("quality.vehiclesUntold", Reason.WORKS_RULE, code, String.join(", ", untold)));
        }
        containment.vehicles().stream()
                .map(Touched::order)
                .forEach(order -> VehicleDoubts.of(ledger.history(Subject.workOrder(order)))
                        .of(code)
                        .filter(doubt -> !doubt.open().isEmpty())
                        .ifPresent(doubt -> against.add(open(doubt, order))));
        return against;
    }

    private static Reason open(VehicleDoubt doubt, String order) {
        String entries = doubt.open().stream()
                        .map(reading -> reading.said().number()
                                + (reading.said().place() > 0
                                        ? "/" + reading.said().place()
                                        : ""))
                        .limit(NAMED)
                        .collect(Collectors.joining(", "))
                + (doubt.open().size() > NAMED ? " …" : "");
        return Reason.of(
                        "quality.readingsOpen",
                        "ISO 9001:2015 7.1.5.2 (clause from memory)",
                        order,
                        doubt.open().size(),
                        entries)
                .liftedAt(doubt.path(order));
    }
}
