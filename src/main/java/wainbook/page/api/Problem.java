package wainbook.page.api;

import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.page.Words;

/**
 * Problem details (RFC 9457).
 *
 * @param reasons every rule that stands in the way
 */
public record Problem(String type, String title, int status, String detail, List<Ground> reasons) {

    public static final String MEDIA_TYPE = "application/problem+json";

    /**
     * One rule in the way.
     *
     * @param key stable, for scripts
     * @param lift the page, or with {@code #} the field, where it is lifted
     */
    public record Ground(String key, List<String> arguments, String text, String source, Optional<String> lift) {
        public static Ground of(Reason reason) {
            return new Ground(
                    reason.key(),
                    reason.arguments(),
                    Words.of(reason.key(), reason.arguments().toArray()),
                    reason.source(),
                    reason.lift());
        }
    }

    /** Rules that an act was refused by: 422 when all of them are about fields of the request, else 409. */
    public static Problem of(List<Reason> reasons) {
        int status = status(reasons);
        return new Problem(
                "about:blank",
                Words.of(status == 422 ? "page.problemFields" : "page.problemRefused"),
                status,
                Words.of(reasons.get(0).key(), reasons.get(0).arguments().toArray()),
                reasons.stream().map(Ground::of).toList());
    }

    public static Problem of(int status, String titleKey, String detail) {
        return new Problem("about:blank", Words.of(titleKey), status, detail, List.of());
    }

    /** The status that a refusal has, for pages and scripts alike. */
    public static int status(List<Reason> reasons) {
        boolean allFields = reasons.stream()
                .allMatch(reason ->
                        reason.lift().filter(lift -> lift.startsWith("#")).isPresent());
        return allFields ? 422 : 409;
    }

    public Response response() {
        return Response.status(status).type(MEDIA_TYPE).entity(this).build();
    }
}
