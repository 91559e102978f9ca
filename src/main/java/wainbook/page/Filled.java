package wainbook.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.page.Trouble.Kind;

/**
 * A form in somebody's hands. Its id was chosen when it was first drawn and stays when it comes back, so that sending it
 * twice writes once.
 *
 * @param reasons what stands against it besides faults at its fields
 */
public record Filled(UUID id, Form form, List<Reason> reasons) {

    public Filled {
        reasons = List.copyOf(reasons);
    }

    public static Filled fresh() {
        return new Filled(UUID.randomUUID(), Form.EMPTY, List.of());
    }

    /** A form as it was sent; one without a readable id came from no page of ours and is turned away. */
    public static Filled sent(String id) {
        try {
            return new Filled(UUID.fromString(String.valueOf(id)), Form.of(Map.of()), List.of());
        } catch (IllegalArgumentException noId) {
            throw new WebApplicationException(Response.status(400)
                    .type(MediaType.TEXT_HTML_TYPE)
                    .entity(Pages.problem(Trouble.of(Kind.STALE).because(Words.of("page.formWithoutId"))))
                    .build());
        }
    }

    /** Takes what stands in a field; a field that was not sent is empty. */
    public Filled with(String field, String value) {
        return new Filled(id, form.with(field, value == null ? "" : value.strip()), reasons);
    }

    public Filled wrong(String field, String key, Object... arguments) {
        return new Filled(id, form.wrong(field, key, arguments), reasons);
    }

    public Filled against(List<Reason> standing) {
        return new Filled(id, form, standing);
    }

    /** Whether the form is not to be drawn at all: what it asks would be refused, and nothing was typed that could be lost. */
    public boolean barred() {
        return !reasons.isEmpty() && form.typed().isEmpty();
    }

    public String value(String field) {
        return form.value(field);
    }

    public boolean right() {
        return form.right();
    }

    /** What an act was refused by: at its field where it names one, else above the form. */
    public Filled refused(List<Reason> against) {
        Form faulty = form;
        var others = new ArrayList<Reason>();
        for (Reason reason : against) {
            String field = reason.lift().orElse("");
            if (field.startsWith("#")) {
                faulty = faulty.wrong(
                        field.substring(1), reason.key(), reason.arguments().toArray());
            } else {
                others.add(reason);
            }
        }
        return new Filled(id, faulty, others);
    }

    /** On to {@code next} when it was written, now or before; else the page again with everything still in it. */
    public <T> Response answer(Outcome<T> outcome, String next, Function<Filled, TemplateInstance> page) {
        return outcome.fold(
                written -> Response.seeOther(URI.create(next)).build(),
                against -> refused(against).again(page));
    }

    public Response again(Function<Filled, TemplateInstance> page) {
        return Response.status(reasons.isEmpty() ? 422 : 409)
                .type(MediaType.TEXT_HTML_TYPE)
                .entity(page.apply(this))
                .build();
    }
}
