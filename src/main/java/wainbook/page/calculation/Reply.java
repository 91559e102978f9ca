package wainbook.page.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import wainbook.engineering.Fault;
import wainbook.engineering.Refusal;
import wainbook.engineering.Working;
import wainbook.page.Words;

/** What goes back: a working, or problem details (RFC 9457). */
record Reply(int status, ObjectNode body) {

    private static final int OK = 200;
    private static final int FAULTY = 400;
    private static final int UNKNOWN = 404;
    private static final int IMPOSSIBLE = 422;

    static Reply worked(String calculation, Record inputs, Working<?> working) {
        ObjectNode body = Written.object();
        body.put("calculation", calculation);
        body.set("inputs", Written.of(inputs));
        body.set("results", Written.of(working.results()));
        body.put("verdict", working.verdict().toString());
        body.set("because", Written.of(working.because()));
        working.decision().ifPresent(decision -> body.set("decision", Written.of(decision)));
        body.set("steps", Written.of(working.steps()));
        body.set("sources", Written.of(working.sources()));
        body.set("cautions", Written.of(working.cautions()));
        return new Reply(OK, body);
    }

    static Reply faulty(List<Fault> faults) {
        Reply reply = problem(
                FAULTY, Words.of("engineering.api.faulty.title"), Words.of("engineering.api.faulty", faults.size()));
        reply.body().set("errors", Written.of(faults));
        return reply;
    }

    static Reply impossible(Refusal refusal) {
        String detail = Written.text(refusal.impossible());
        Reply reply = problem(IMPOSSIBLE, Words.of("engineering.api.impossible.title"), detail);
        reply.body().put("refusal", refusal.key());
        reply.body().put("check", Written.text(refusal.check()));
        return reply;
    }

    static Reply unknown(String name) {
        return problem(UNKNOWN, Words.of("engineering.api.unknown.title"), Words.of("engineering.api.unknown", name));
    }

    String mediaType() {
        return status == OK ? "application/json" : "application/problem+json";
    }

    private static Reply problem(int status, String title, String detail) {
        ObjectNode body = Written.object();
        body.put("type", "about:blank");
        body.put("title", title);
        body.put("status", status);
        body.put("detail", detail);
        return new Reply(status, body);
    }
}
