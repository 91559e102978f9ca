package wainbook.handover.record;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import wainbook.ledger.History;
import wainbook.ledger.evidence.EvidenceFile;

/** Keeps names of people of others outside the ledger; the ledger gets a hash of the salted name and firm. */
@ApplicationScoped
public class OutsideNames {

    /** @param firm may be empty */
    public record Named(String fullName, String firm) {}

    private final SecureRandom random = new SecureRandom();

    /** Keeps what is not kept yet, so that asking again changes nothing; gives the hashes for the ledger, in order. */
    public List<String> keep(UUID entry, String order, List<Named> people) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> IntStream.range(0, people.size())
                        .mapToObj(place -> OutsideName.of(entry, place)
                                .orElseGet(() -> row(OutsideName.id(entry, place), order, people.get(place))))
                        .map(row -> EvidenceFile.of(
                                        (row.salt + row.fullName + "\n" + row.firm)
                                                .getBytes(java.nio.charset.StandardCharsets.UTF_8),
                                        "text/plain")
                                .sha256())
                        .toList());
    }

    /** Takes back what was kept for an entry that the ledger then refused; an entry that is there keeps its names. */
    public void forget(UUID entry, History history) {
        if (history.entry(entry).isEmpty()) {
            QuarkusTransaction.joiningExisting().run(() -> OutsideName.delete("id like ?1", entry + "/%"));
        }
    }

    private OutsideName row(String id, String order, Named named) {
        byte[] salt = new byte[16];
        random.nextBytes(salt);
        var row = new OutsideName();
        row.id = id;
        row.workOrder = order;
        row.fullName = named.fullName();
        row.firm = named.firm();
        row.salt = HexFormat.of().formatHex(salt);
        row.persist();
        return row;
    }
}
