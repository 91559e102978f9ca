package wainbook.book.set.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import wainbook.book.Volume;
import wainbook.book.set.Making.Printed;
import wainbook.ledger.History;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;

/** Books and frozen sets as files to take away. */
@ApplicationScoped
class BookFiles {

    private final EvidenceFiles files;

    BookFiles(EvidenceFiles files) {
        this.files = files;
    }

    static Response book(String order, Printed ready) {
        return file(ready.pdf(), "application/pdf", "build-book-" + order + ".pdf");
    }

    Response set(History history, int volume) {
        return kept(volume(history, volume).said().set(), name(history, volume) + ".zip");
    }

    Response merged(History history, int volume) {
        return kept(volume(history, volume).said().merged(), name(history, volume) + ".pdf");
    }

    private static Volume volume(History history, int number) {
        return Volume.of(history).stream()
                .filter(volume -> volume.said().volume() == number)
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    private static String name(History history, int volume) {
        return "handover-set-" + history.subject().code() + "-" + volume;
    }

    private Response kept(EvidenceFile file, String name) {
        return file(files.bytes(file.sha256()).orElseThrow(NotFoundException::new), file.mediaType(), name);
    }

    private static Response file(byte[] bytes, String type, String name) {
        return Response.ok(bytes)
                .type(type)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .build();
    }
}
