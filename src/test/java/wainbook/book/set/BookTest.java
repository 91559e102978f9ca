package wainbook.book.set;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.book.chapter.BuildBook;
import wainbook.book.photograph.Photograph;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.verification.Verify;
import wainbook.print.Heading;
import wainbook.print.PdfPage;
import wainbook.print.Printer;
import wainbook.print.Validated;
import wainbook.rehearsal.PlayedVehicles;
import wainbook.station.StationSaying.Measured;
import wainbook.works.PersonName;

/** The build book of a vehicle that went its whole way, and of one that was only ordered; the set that goes with it. */
@QuarkusTest
class BookTest {

    /** Played and made once: it takes long. */
    private static String handedOver;

    private static BuildBook.Made made;
    private static HandoverSet.Packed packed;

    @Inject
    BuildBook buildBook;

    @Inject
    HandoverSet handoverSet;

    @Inject
    Ledger ledger;

    @Inject
    Verify verify;

    @BeforeEach
    void a_vehicle_went_its_whole_way() {
        Cast.assemble();
        if (handedOver == null) {
            handedOver = new PlayedVehicles().handedOver();
            made = buildBook.of(handedOver).orElseThrow();
            packed = handoverSet.of(handedOver).orElseThrow();
        }
    }

    @Test
    void the_book_of_a_whole_way_is_archivable_accessible_and_says_what_is_on_record() {
        Validated.passes(made.pdf());
        String text = Validated.text(made.pdf());
        History history = ledger.history(Subject.workOrder(handedOver));
        Measured reading = history.saying(Measured.class)
                .map(entry -> (Measured) entry.saying())
                .findFirst()
                .orElseThrow();
        assertThat(text)
                .contains(handedOver, "Handed over to")
                .contains(reading.reading().toPlainString() + " " + reading.unit())
                .contains("No hash can tell whether what was entered was true.")
                .contains(history.entries().get(history.entries().size() - 1).hash())
                .contains("calibration then due", "not needed", "Tester", "proved after on")
                .doesNotContain("\uFFFD", "Not finished");
        assertThat(text).containsPattern("Page 1 of \\d\\d").contains("Ω", "·", "°");
    }

    @Test
    void every_working_stands_in_the_book_with_its_formula_and_source() {
        var calculations = made.book().chapters().stream()
                .filter(chapter -> chapter.key().equals("calculations"))
                .findFirst()
                .orElseThrow();
        long determined = ledger.history(Subject.workOrder(handedOver))
                .saying(wainbook.station.StationSaying.Determined.class)
                .count();
        assertThat(calculations.blocks().stream()
                        .filter(block -> block.kind().name().equals("PART")))
                .hasSize((int) determined);
        assertThat(Validated.text(made.pdf())).contains("Formula", "Sources: ");
    }

    @Test
    void the_book_of_an_order_says_plainly_what_is_missing() {
        byte[] pdf = buildBook.of(ordered()).orElseThrow().pdf();
        Validated.passes(pdf);
        assertThat(Validated.text(pdf))
                .contains("Not finished: ordered, no donor yet.", "No donor vehicle is on record.")
                .contains("The vehicle has not been at a stage.", "No isolation is on record.");
    }

    @Test
    void the_same_record_gives_the_same_book_and_set() {
        var again = handoverSet.of(handedOver).orElseThrow();
        assertThat(again.zip()).isEqualTo(packed.zip());
        assertThat(again.merged()).isEqualTo(packed.merged());
    }

    @Test
    void the_attached_record_is_verified_by_whoever_has_nothing_else() throws IOException {
        Map<String, byte[]> files = Validated.attachments(made.pdf());
        assertThat(files).containsOnlyKeys("ledger.ndjson", "ledger-format.md", "manifest.json");
        proved(files);
        assertThat(new String(files.get("ledger-format.md"), UTF_8)).contains("# The ledger's bytes");
    }

    @Test
    void nobody_is_named_in_book_or_set() throws IOException {
        List<String> names = PersonName.<PersonName>listAll().stream()
                .map(row -> row.fullName)
                .toList();
        assertThat(names).isNotEmpty();
        assertThat(Validated.text(packed.merged())).doesNotContain(names);
        unzipped(packed.zip())
                .forEach((name, bytes) ->
                        assertThat(new String(bytes, UTF_8)).as(name).doesNotContain(names));
    }

    @Test
    void the_set_opens_from_any_folder_and_its_manifest_is_true() throws IOException {
        Map<String, byte[]> files = unzipped(packed.zip());
        assertThat(files)
                .containsKeys(
                        "index.html", "book.css", "build-book.pdf", "handover-set.pdf", "ledger.ndjson", "files.html");
        proved(files);
        JsonNode manifest = new ObjectMapper().readTree(files.get("manifest.json"));
        Map<String, String> listed = new LinkedHashMap<>();
        manifest.get("files")
                .forEach(file ->
                        listed.put(file.get("name").asText(), file.get("sha256").asText()));
        assertThat(listed.keySet()).hasSize(files.size() - 1).doesNotContain("manifest.json");
        listed.forEach(
                (name, sha256) -> assertThat(sha256(files.get(name))).as(name).isEqualTo(sha256));
        files.forEach((name, bytes) -> {
            if (name.endsWith(".html")) {
                assertThat(new String(bytes, UTF_8))
                        .as(name)
                        .doesNotContain("<script", "href=\"/", "src=\"/", "href=\"http", "src=\"http")
                        .contains("<html lang=\"en-GB\">");
            }
        });
        assertThat(Validated.pages(files.get("handover-set.pdf")))
                .isGreaterThanOrEqualTo(Validated.pages(files.get("build-book.pdf")));
    }

    @Test
    void the_set_carries_every_photograph_and_says_what_each_shows() throws IOException {
        Map<String, byte[]> files = unzipped(packed.zip());
        List<Photograph> photographs = made.material().photographs().all();
        assertThat(photographs).as("of sheets and of its condition").hasSizeGreaterThan(3);
        var listed = new LinkedHashMap<String, JsonNode>();
        new ObjectMapper()
                .readTree(files.get("manifest.json"))
                .get("files")
                .forEach(file -> listed.put(file.get("name").asText(), file));
        for (Photograph one : photographs) {
            assertThat(sha256(files.get(one.name()))).isEqualTo(one.file().sha256());
            assertThat(one.name()).contains(one.file().sha256().substring(0, 8));
            JsonNode said = listed.get(one.name()).get("photograph");
            assertThat(said.get("shows").asText()).isEqualTo(one.shows()).isNotBlank();
            assertThat(said.get("entry").asText()).isEqualTo(String.valueOf(one.entry()));
            assertThat(Instant.parse(said.get("at").asText())).isEqualTo(one.at());
            assertThat(new String(files.get("photographs.html"), UTF_8)).contains("href=\"" + one.name() + "\"");
        }
        assertThat(listed.get("build-book.pdf").has("photograph")).isFalse();
        assertThat(Validated.text(made.pdf())).contains(photographs.get(0).name());
    }

    @Test
    void condition_photographs_stand_small_in_the_book_with_what_they_show() throws IOException {
        List<ConditionPictured> pictured = ledger.history(Subject.workOrder(handedOver))
                .saying(ConditionPictured.class)
                .map(entry -> (ConditionPictured) entry.saying())
                .toList();
        assertThat(pictured).isNotEmpty();
        String page = new String(unzipped(packed.zip()).get("vehicle.html"), UTF_8);
        for (ConditionPictured said : pictured) {
            assertThat(page).contains("alt=\"Photograph: " + said.picture() + ". " + said.place());
        }
        assertThat(page).contains("src=\"data:image/jpeg;base64,", "<a href=\"photographs/");
        assertThat(Validated.pictures(made.pdf())).isGreaterThanOrEqualTo(pictured.size());
        Validated.passes(packed.merged());
    }

    @Test
    @Tag("database")
    void a_set_is_frozen_once_kept_for_ever_and_a_later_change_makes_a_further_volume() throws IOException {
        String number = new PlayedVehicles().handedOver();
        UUID id = UUID.randomUUID();
        freeze(number, id).then().statusCode(201).body("kind", equalTo("book.setFrozen/1"));
        freeze(number, id).then().statusCode(200);
        freeze(number, UUID.randomUUID()).then().statusCode(409).body("reasons.key", hasItem("book.setFrozenAlready"));
        var volumes = Cast.AUDITOR.asks().get(path(number, "/volumes")).jsonPath();
        byte[] kept = Cast.AUDITOR
                .asks()
                .get(path(number, "/volumes/1/set.zip"))
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        assertThat(sha256(kept)).isEqualTo(volumes.getString("[0].set.sha256"));
        assertThat(kept).hasSize(volumes.getInt("[0].set.sizeBytes"));

        String sha256 = noteWithFile(number);
        freeze(number, UUID.randomUUID()).then().statusCode(201);
        assertThat(Cast.AUDITOR.asks().get(path(number, "/volumes")).jsonPath().getList("volume", Integer.class))
                .containsExactly(1, 2);
        assertThat(Cast.AUDITOR.asks().get(path(number, "/volumes/1/set.zip")).asByteArray())
                .isEqualTo(kept);
        Map<String, byte[]> files = unzipped(
                Cast.AUDITOR.asks().get(path(number, "/volumes/2/set.zip")).asByteArray());
        String document = "documents/GB-02-" + sha256.substring(0, 8) + ".pdf";
        assertThat(sha256(files.get(document))).isEqualTo(sha256);
        assertThat(new String(files.get("files.html"), UTF_8)).contains("href=\"" + document + "\"");
        byte[] merged = files.get("handover-set.pdf");
        Validated.passes(merged);
        assertThat(Validated.text(merged))
                .contains("The document follows as it was handed in.", "Weighed by the gate.");
        List<byte[]> documents = files.entrySet().stream()
                .filter(file -> file.getKey().startsWith("documents/"))
                .map(Map.Entry::getValue)
                .toList();
        assertThat(documents).as("its scan, and what the works issued").hasSizeGreaterThan(1);
        assertThat(Validated.pages(merged))
                .as("book, and before each document a page that names it")
                .isEqualTo(Validated.pages(files.get("build-book.pdf"))
                        + documents.size()
                        + documents.stream().mapToInt(Validated::pages).sum());
        assertThat(verify.everything().findings())
                .filteredOn(finding -> finding.toString().contains(number))
                .isEmpty();
    }

    @Test
    void a_set_is_not_frozen_before_the_vehicle_is_handed_over() {
        String number = ordered();
        freeze(number, UUID.randomUUID()).then().statusCode(409).body("reasons.key", hasItem("book.setTooEarly"));
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/orders/" + number + "/book"))
                .contains("The vehicle is not handed over", "Make the book")
                .doesNotContain("name=\"seen\"");
    }

    @Test
    void a_page_asks_for_the_book_and_offers_it_when_it_is_ready() {
        String number = ordered();
        Browsing auditor = Browsing.as(Cast.AUDITOR);
        String path = "/orders/" + number + "/book";
        assertThat(auditor.get(path + "/book.pdf").statusCode()).isEqualTo(404);
        Map<String, Object> form = auditor.form(path);
        assertThat(auditor.send(path, form).statusCode()).isEqualTo(303);
        byte[] scripts = Cast.AUDITOR
                .asks()
                .get(path(number, "/book.pdf"))
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        assertThat(auditor.page(path)).contains("The book is ready", "Take the book, up to entry");
        assertThat(auditor.get(path + "/book.pdf").asByteArray()).isEqualTo(scripts);
    }

    private static String path(String number, String rest) {
        return "/api/v1/orders/" + number + rest;
    }

    private static Response freeze(String number, UUID id) {
        return Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/json")
                .body(Map.of("id", id))
                .post(path(number, "/volumes"));
    }

    /** A document that came later, with its scan; gives the fingerprint of that. */
    private static String noteWithFile(String number) {
        byte[] scan = Printer.pdf(new PdfPage(
                "<p>Weighed by the gate.</p>",
                new Heading("Ticket", "A ticket.", Locale.UK, Instant.parse("2026-11-26T09:14:27Z")),
                List.of()));
        String sha256 = Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/pdf")
                .body(scan)
                .post(path(number, "/files"))
                .then()
                .extract()
                .path("sha256");
        Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "state", "IN_HAND", "reference", "V5-77", "sha256", sha256))
                .post(path(number, "/documents/GB-02"))
                .then()
                .statusCode(201);
        return sha256;
    }

    private static String ordered() {
        String number = "BK-" + UUID.randomUUID().toString().substring(0, 8);
        Cast.WORKS_ENGINEER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id", UUID.randomUUID(),
                        "number", number,
                        "operator", "Vale <and> Fen",
                        "variant", "bus-12m",
                        "route", "BUS-12M",
                        "promisedOn", "2027-02-12",
                        "facts", List.of()))
                .post("/api/v1/orders")
                .then()
                .statusCode(201);
        return number;
    }

    /** The ten lines of the book, in another language. */
    private static void proved(Map<String, byte[]> files) throws IOException {
        String before = "0".repeat(64);
        long number = 0;
        for (String line : new String(files.get("ledger.ndjson"), UTF_8).split("\n")) {
            JsonNode entry = new ObjectMapper().readTree(line);
            assertThat(entry.get("number").asText()).isEqualTo(String.valueOf(++number));
            assertThat(entry.get("previous").asText()).isEqualTo(before);
            before = sha256(line.getBytes(UTF_8));
        }
        JsonNode manifest = new ObjectMapper().readTree(files.get("manifest.json"));
        assertThat(manifest.get("head").asText()).isEqualTo(before);
        assertThat(manifest.get("entries").asText()).isEqualTo(String.valueOf(number));
    }

    private static Map<String, byte[]> unzipped(byte[] zip) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (var from = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (var entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                files.put(entry.getName(), from.readAllBytes());
            }
        }
        return files;
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }
}
