package wainbook.page.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import io.quarkus.security.ForbiddenException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import wainbook.ledger.bytes.UnwritableText;
import wainbook.page.Pages;
import wainbook.page.Trouble;
import wainbook.page.Trouble.Kind;
import wainbook.page.Words;

/** What a request gets that no resource could answer: a page for people, problem details for scripts, never a trace. */
class Mishaps {

    private static final Logger LOG = Logger.getLogger(Mishaps.class);

    @ServerExceptionMapper
    Response notAllowed(ForbiddenException notAllowed, UriInfo at) {
        return answer(at, Trouble.of(Kind.FORBIDDEN), 403);
    }

    @ServerExceptionMapper
    Response notFoundAndTheLike(WebApplicationException said, UriInfo at) {
        Response response = said.getResponse();
        if (response.hasEntity() || response.getStatus() < 400) {
            return response;
        }
        if (said.getCause() instanceof JsonProcessingException unreadable) {
            return unreadable(unreadable);
        }
        return switch (response.getStatus()) {
            case 403 -> answer(at, Trouble.of(Kind.FORBIDDEN), 403);
            case 404 -> answer(at, Trouble.of(Kind.MISSING), 404);
            default ->
                api(at)
                        ? Problem.of(response.getStatus(), "page.problemRequest", String.valueOf(said.getMessage()))
                                .response()
                        : response;
        };
    }

    @ServerExceptionMapper
    Response unreadable(JsonProcessingException unreadable) {
        String where = unreadable instanceof JsonMappingException mapping
                ? mapping.getPath().stream()
                        .map(part -> part.getFieldName() == null ? "[" + part.getIndex() + "]" : part.getFieldName())
                        .collect(Collectors.joining("."))
                : "";
        return Problem.of(400, "page.problemBody", where.isEmpty() ? unreadable.getOriginalMessage() : where)
                .response();
    }

    @ServerExceptionMapper
    Response unwritable(UnwritableText text, UriInfo at) {
        return api(at)
                ? Problem.of(422, "page.problemText", Words.of("page.unwritable"))
                        .response()
                : answer(at, Trouble.of(Kind.STALE).because(Words.of("page.unwritable")), 422);
    }

    @ServerExceptionMapper
    Response brokeDown(RuntimeException broken, UriInfo at) {
        for (Throwable cause = broken; cause != null; cause = cause.getCause()) {
            if (cause instanceof UnwritableText text) {
                return unwritable(text, at);
            }
        }
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(broken, "%s at %s", reference, at.getPath());
        return answer(at, Trouble.failed(reference), 500);
    }

    private static Response answer(UriInfo at, Trouble trouble, int status) {
        return api(at)
                ? Problem.of(
                                status,
                                "page." + trouble.kind().name().toLowerCase(java.util.Locale.ROOT) + "Title",
                                trouble.kind().text()
                                        + trouble.reference()
                                                .map(reference -> " " + reference)
                                                .orElse(""))
                        .response()
                : Response.status(status)
                        .type(MediaType.TEXT_HTML_TYPE)
                        .entity(Pages.problem(trouble))
                        .build();
    }

    private static boolean api(UriInfo at) {
        return at.getPath().startsWith("/api/");
    }
}
