package wainbook.quality.record.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.quality.record.Agreeing;
import wainbook.quality.record.Agreeing.ToAgree;
import wainbook.quality.record.Agreeing.ToEnd;
import wainbook.works.Role;

/** Whether the works has agreed to statistics by person. Everyone may read it. */
@Path("/quality/agreement")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class AgreementPage {

    private static final String HERE = "/quality/agreement";

    private final Agreeing agreeing;
    private final SignedIn signedIn;

    AgreementPage(Agreeing agreeing, SignedIn signedIn) {
        this.agreeing = agreeing;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance agreement() {
        return draw(Filled.fresh());
    }

    private TemplateInstance draw(Filled filled) {
        return QuestionPages.agreement(new AgreementView(
                agreeing.latest(),
                agreeing.at(signedIn.now().at()).isPresent(),
                signedIn.is(Role.qualityEngineer),
                filled));
    }

    @POST
    @RolesAllowed(Role.qualityEngineer)
    public Response agree(
            @RestForm String id, @RestForm String document, @RestForm String readers, @RestForm String until) {
        Filled filled = Filled.sent(id)
                .with("document", document)
                .with("readers", readers)
                .with("until", until);
        Optional<LocalDate> last = date(filled.value("until"));
        if (last.isEmpty()) {
            return filled.wrong("until", "quality.untilMissing").again(this::draw);
        }
        List<String> numbers = Arrays.stream(filled.value("readers").split("[\\s,;]+"))
                .filter(number -> !number.isBlank())
                .distinct()
                .toList();
        return filled.answer(
                agreeing.agree(
                        new ToAgree(filled.id(), filled.value("document"), numbers, last.get()), signedIn.actor()),
                HERE,
                this::draw);
    }

    @POST
    @Path("ending")
    @RolesAllowed(Role.qualityEngineer)
    public Response end(@RestForm String id, @RestForm String reason) {
        Filled filled = Filled.sent(id).with("reason", reason);
        return filled.answer(
                agreeing.end(new ToEnd(filled.id(), filled.value("reason")), signedIn.actor()), HERE, this::draw);
    }

    private static Optional<LocalDate> date(String typed) {
        try {
            return typed.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }
}
