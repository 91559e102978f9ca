package wainbook.page.api;

import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.UUID;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.Kinds;

/**
 * What a script gets for an act: where it stands on the record.
 *
 * @param kind what was said; an observation where the act could pass nothing
 */
public record Receipt(UUID id, String subject, long number, String kind, Instant at, String hash) {

    static Receipt of(Entry entry) {
        return new Receipt(
                entry.id(),
                entry.subject().toString(),
                entry.number(),
                Kinds.name(entry.saying().getClass()),
                entry.moment().at(),
                entry.hash());
    }

    /** 201 for a new entry, 200 for one that was there, problem details for a refusal. */
    public static Response of(Outcome<Entry> outcome) {
        return outcome.fold(
                entry -> Response.status(201).entity(of(entry)).build(),
                entry -> Response.ok(of(entry)).build(),
                reasons -> Problem.of(reasons).response());
    }
}
