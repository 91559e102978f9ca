package wainbook.ledger.verification;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.StreamSupport;
import wainbook.ledger.bytes.CanonicalJson;
import wainbook.ledger.evidence.EvidenceFile;

/** Finds the files that an entry's body points to, wherever they stand in it. */
final class Evidence {

    private Evidence() {}

    static List<EvidenceFile> in(JsonNode body) {
        return StreamSupport.stream(body.findParents("sha256").spliterator(), false)
                .map(file -> CanonicalJson.read(file, EvidenceFile.class))
                .toList();
    }
}
