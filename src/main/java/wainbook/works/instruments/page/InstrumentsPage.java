package wainbook.works.instruments.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;
import wainbook.works.WorksSaying.GearDescribed;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.Issue;
import wainbook.works.instruments.Register;
import wainbook.works.instruments.page.InstrumentViews.Row;
import wainbook.works.instruments.page.InstrumentViews.Standing;
import wainbook.works.shift.WorksDay;

/** The register of instruments, due soonest first, and one instrument with its calibrations. */
@Path("/instruments")
@Produces(MediaType.TEXT_HTML)
public class InstrumentsPage {

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";
    private static final String DECIMAL = "-?\\d{1,12}([.]\\d{1,9})?";

    private final Ledger ledger;
    private final Register register;
    private final WorksDay day;
    private final SignedIn signedIn;

    InstrumentsPage(Ledger ledger, Register register, WorksDay day, SignedIn signedIn) {
        this.ledger = ledger;
        this.register = register;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance instruments(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> kind,
            @RestQuery Optional<String> standing) {
        String text = search.map(String::strip).orElse("");
        Form form =
                Form.EMPTY.with("search", text).with("kind", kind.orElse("")).with("standing", standing.orElse(""));
        String csv = "/instruments/instruments.csv?search=" + encoded(text) + "&kind=" + encoded(kind.orElse(""))
                + "&standing=" + encoded(standing.orElse(""));
        List<String> kinds = InstrumentRow.register().stream()
                .map(row -> row.kind)
                .distinct()
                .sorted()
                .toList();
        return InstrumentPages.instruments(
                new InstrumentViews.Listed(found(search, kind, standing), kinds, form, csv, mayKeep()));
    }

    @GET
    @Path("instruments.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> kind,
            @RestQuery Optional<String> standing) {
        List<List<String>> rows = found(search, kind, standing).stream()
                .map(one -> List.of(
                        one.row().code,
                        one.row().kind,
                        one.row().title,
                        one.row().due == null ? "" : one.row().due.toString(),
                        one.standing().words()))
                .toList();
        return Csv.file(
                "instruments", Arrays.asList(Words.of("works.instrumentsHeader").split(";")), rows);
    }

    @GET
    @Path("new")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public TemplateInstance form() {
        return InstrumentPages.register(new InstrumentViews.Registering(Filled.fresh()));
    }

    @POST
    @Path("new")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response register(
            @RestForm String id,
            @RestForm String code,
            @RestForm String kind,
            @RestForm String title,
            @RestForm String unit,
            @RestForm String lower,
            @RestForm String upper,
            @RestForm String accuracyPercent) {
        Filled filled = Filled.sent(id)
                .with("code", code)
                .with("kind", kind)
                .with("title", title)
                .with("unit", unit)
                .with("lower", lower)
                .with("upper", upper)
                .with("accuracyPercent", accuracyPercent);
        Filled checked = checked(filled);
        if (!checked.right()) {
            return checked.again(again -> InstrumentPages.register(new InstrumentViews.Registering(again)));
        }
        var asked = new Register.ToRegister(
                filled.id(),
                filled.value("code"),
                filled.value("kind"),
                filled.value("title"),
                filled.value("unit"),
                new BigDecimal(filled.value("lower")),
                new BigDecimal(filled.value("upper")),
                Optional.of(filled.value("accuracyPercent"))
                        .filter(there -> !there.isEmpty())
                        .map(BigDecimal::new));
        return filled.answer(
                register.register(asked, signedIn.actor()),
                "/instruments/" + filled.value("code"),
                again -> InstrumentPages.register(new InstrumentViews.Registering(again)));
    }

    @GET
    @Path("{code}")
    @Authenticated
    public TemplateInstance instrument(String code) {
        return draw(code, Filled.fresh());
    }

    @POST
    @Path("{code}/withdrawal")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer, Role.technician})
    public Response withdraw(
            String code, @RestForm String id, @RestForm String cause, @RestForm String reason, @RestForm String since) {
        known(code);
        Filled filled =
                Filled.sent(id).with("cause", cause).with("reason", reason).with("since", since);
        Optional<WithdrawalCause> known = Arrays.stream(WithdrawalCause.values())
                .filter(one -> one.name().equals(filled.value("cause")))
                .findFirst();
        Optional<Instant> happened = time(filled.value("since"));
        Filled checked = known.isEmpty() ? filled.wrong("cause", "works.causeMissing") : filled;
        checked = happened.isEmpty() && !filled.value("since").isEmpty()
                ? checked.wrong("since", "works.timeFault")
                : checked;
        if (!checked.right()) {
            return checked.again(again -> draw(code, again));
        }
        var asked = new Register.ToWithdraw(filled.id(), code, known.orElseThrow(), filled.value("reason"), happened);
        return answer(code, filled, register.withdraw(asked, signedIn.actor()));
    }

    @POST
    @Path("{code}/description")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response describe(
            String code,
            @RestForm String id,
            @RestForm String size,
            @RestForm String rating,
            @RestForm String expires) {
        known(code);
        Filled filled =
                Filled.sent(id).with("size", size).with("rating", rating).with("expires", expires);
        Optional<LocalDate> last = date(filled.value("expires"));
        if (last.isEmpty() && !filled.value("expires").isEmpty()) {
            return filled.wrong("expires", "works.dateFault").again(again -> draw(code, again));
        }
        var asked = new Register.ToDescribe(
                filled.id(), code, text(filled.value("size")), text(filled.value("rating")), last);
        return answer(code, filled, register.describe(asked, signedIn.actor()));
    }

    private static Optional<String> text(String typed) {
        return Optional.of(typed).filter(there -> !there.isEmpty());
    }

    private static Optional<LocalDate> date(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    /** A time of day at the works, as a browser's field writes it. */
    private Optional<Instant> time(String typed) {
        try {
            return Optional.of(LocalDateTime.parse(typed).atZone(day.zone()).toInstant());
        } catch (DateTimeParseException noTime) {
            return Optional.empty();
        }
    }

    private Response answer(String code, Filled filled, Outcome<Entry> outcome) {
        return filled.answer(outcome, "/instruments/" + code, again -> draw(code, again));
    }

    private static Filled checked(Filled filled) {
        Filled checked = filled.value("code").matches(CODE) ? filled : filled.wrong("code", "works.codeFault");
        checked = filled.value("kind").matches(CODE) ? checked : checked.wrong("kind", "works.codeFault");
        for (String field : List.of("title", "unit")) {
            if (filled.value(field).isEmpty() || filled.value(field).length() > 200) {
                checked = checked.wrong(field, "works.nameFault");
            }
        }
        for (String field : List.of("lower", "upper", "accuracyPercent")) {
            boolean left =
                    field.equals("accuracyPercent") && filled.value(field).isEmpty();
            if (!left && !filled.value(field).matches(DECIMAL)) {
                checked = checked.wrong(field, "works.decimalFault");
            }
        }
        return checked;
    }

    private List<Row> found(Optional<String> search, Optional<String> kind, Optional<String> standing) {
        LocalDate today = day.of(signedIn.now().at());
        String wanted = search.map(String::strip).orElse("").toLowerCase(Words.LOCALE);
        return InstrumentRow.register().stream()
                .filter(row ->
                        (row.code + " " + row.title).toLowerCase(Words.LOCALE).contains(wanted))
                .filter(row -> kind.filter(word -> !word.isEmpty() && !word.equals(row.kind))
                        .isEmpty())
                .map(row -> new Row(row, Standing.of(row.withdrawn, row.due, today)))
                .filter(one -> standing.filter(word ->
                                !word.isEmpty() && !word.equals(one.standing().name()))
                        .isEmpty())
                .sorted(Comparator.comparing((Row one) -> one.standing() == Standing.WITHDRAWN)
                        .thenComparing(one -> one.row().due == null ? LocalDate.MIN : one.row().due)
                        .thenComparing(one -> one.row().code))
                .toList();
    }

    private TemplateInstance draw(String code, Filled filled) {
        History history = known(code);
        return InstrumentPages.instrument(new InstrumentViews.One(
                Instrument.of(history).orElseThrow(),
                Calibrations.of(history),
                Issue.of(history),
                history.last(GearDescribed.class),
                day.of(signedIn.now().at()),
                history.number(),
                filled,
                mayKeep(),
                mayKeep() || signedIn.is(Role.technician)));
    }

    private boolean mayKeep() {
        return signedIn.is(Role.worksEngineer) || signedIn.is(Role.qualityEngineer);
    }

    private History known(String code) {
        if (!code.matches(CODE)) {
            throw new NotFoundException();
        }
        History history = ledger.history(Subject.instrument(code));
        if (Instrument.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
