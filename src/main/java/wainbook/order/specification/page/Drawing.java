package wainbook.order.specification.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.Ordering;
import wainbook.order.WorkOrder;
import wainbook.order.duty.Duty;
import wainbook.order.specification.Specification;
import wainbook.order.specification.SpecificationLook;
import wainbook.order.specification.Worked;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** Draws the page of a specification, with one of its forms as it was sent where that came back. */
@RequestScoped
class Drawing {

    private final Ledger ledger;
    private final SpecificationLook look;
    private final SignedIn signedIn;

    Drawing(Ledger ledger, SpecificationLook look, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.signedIn = signedIn;
    }

    Page of(String order) {
        History history = ledger.history(Numbers.subject(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        return new Page(look.worked(history, signedIn.now().at()), Optional.empty(), Optional.empty());
    }

    static Filled filled(MultivaluedMap<String, String> sent) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            filled = field.equals("id") ? filled : filled.with(field, sent.getFirst(field));
        }
        return filled;
    }

    /** The last entry that somebody had seen; a page that does not say has seen none. */
    static long judged(Filled filled) {
        return number(filled.value("judged"));
    }

    static long number(String text) {
        return text != null && text.matches("[0-9]{1,9}") ? Long.parseLong(text) : 0;
    }

    /** The forms of the page: fresh from what is known, or one of them as it was sent. */
    private record Forms(
            Optional<Filled> duty,
            Optional<Filled> vehicle,
            Optional<Filled> trace,
            Optional<Filled> choice,
            List<String> traceFaults) {}

    private static final Forms FRESH =
            new Forms(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    /** One page in the making. */
    final class Page {
        private final Worked worked;
        private final Optional<String> packs;
        private final Forms forms;

        private Page(Worked worked, Optional<String> packs, Optional<Forms> forms) {
            this.worked = worked;
            this.packs = packs;
            this.forms = forms.orElse(FRESH);
        }

        Specification specification() {
            return worked.specification();
        }

        String path() {
            return "/orders/" + worked.order().number() + "/specification";
        }

        Page packs(Optional<String> type) {
            return new Page(worked, type, Optional.of(forms));
        }

        Page duty(Filled sent) {
            return with(new Forms(Optional.of(sent), Optional.empty(), Optional.empty(), Optional.empty(), List.of()));
        }

        Page vehicle(Filled sent) {
            return with(new Forms(Optional.empty(), Optional.of(sent), Optional.empty(), Optional.empty(), List.of()));
        }

        Page trace(Filled sent, List<String> faults) {
            return with(new Forms(Optional.empty(), Optional.empty(), Optional.of(sent), Optional.empty(), faults));
        }

        Page choice(Filled sent) {
            return with(new Forms(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(sent), List.of()));
        }

        private Page with(Forms others) {
            return new Page(worked, packs, Optional.of(others));
        }

        TemplateInstance draw() {
            return SpecificationPages.specification(view());
        }

        SpecificationView view() {
            return SpecificationView.of(
                    worked,
                    packs,
                    forms.duty().orElseGet(this::freshDuty),
                    forms.vehicle().orElseGet(this::freshVehicle),
                    forms.trace().orElseGet(this::freshTrace),
                    forms.choice().orElseGet(Filled::fresh),
                    signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager),
                    Stream.of(
                                    Role.technician,
                                    Role.teamLeader,
                                    Role.inspector,
                                    Role.worksEngineer,
                                    Role.qualityEngineer)
                            .anyMatch(signedIn::is),
                    Ordering.closed(Optional.of(worked.order())),
                    forms.traceFaults());
        }

        private Filled freshDuty() {
            return worked.specification()
                    .duty()
                    .map(said -> DutyForm.of(Filled.fresh(), said.what()))
                    .orElseGet(() -> DutyForm.fresh(Filled.fresh(), ChassisForm.bus(worked.order())));
        }

        private Filled freshVehicle() {
            return worked.specification()
                    .chassis()
                    .map(said -> ChassisForm.of(Filled.fresh(), said.what()))
                    .orElseGet(() -> ChassisForm.fresh(
                            Filled.fresh(), worked.order(), worked.received(), look.alike(worked.order())));
        }

        private Filled freshTrace() {
            Optional<Duty.RecordedWay> way =
                    worked.specification().duty().map(Specification.Said::what).flatMap(Duty::recorded);
            return Filled.fresh()
                    .with(
                            "timesADay",
                            way.map(one -> DutyForm.plain(one.timesADay())).orElse("1"))
                    .with(
                            "traceLoadPercent",
                            way.map(one -> DutyForm.plain(one.loadPercent())).orElse("50"));
        }
    }
}
