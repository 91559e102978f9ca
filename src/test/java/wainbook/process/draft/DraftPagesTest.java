package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OwnSheet;
import wainbook.process.Releases;
import wainbook.process.sheet.Ask;

/** A next revision from the first word to its release, by the pages and by scripts. */
@QuarkusTest
class DraftPagesTest {

    private static final Ask TICK = new Ask.Confirm(Optional.empty());

    @Inject
    Releases releases;

    private OwnSheet sheet;
    private String path;
    private String api;
    private Browsing engineer;
    private Browsing quality;

    @BeforeEach
    void a_sheet_in_force() {
        Cast.assemble();
        sheet = OwnSheet.released(
                OwnSheet.item("frame", "Look over the frame", TICK, 5),
                OwnSheet.item("doors", "Look at the doors", TICK, 5));
        path = "/process/sheets/" + sheet.code();
        api = "/api/v1/process/sheets/" + sheet.code();
        engineer = Browsing.as(Cast.WORKS_ENGINEER);
        quality = Browsing.as(Cast.QUALITY_ENGINEER);
    }

    @Test
    void a_sheet_is_found_and_read_with_its_history() {
        assertThat(engineer.page("/process?search=" + sheet.code())).contains(path, "Survey of a test");
        assertThat(engineer.page("/process/sheets.csv?search=" + sheet.code()))
                .startsWith("code,title,stage")
                .contains(sheet.code());
        assertThat(Browsing.as(Cast.TECHNICIAN).page(path))
                .contains(
                        "Look over the frame", "a confirmation", "revision 1, in force", Cast.WORKS_ENGINEER.fullName())
                .doesNotContain("Draft the next revision");
    }

    @Test
    void what_one_writes_another_releases_and_the_former_revision_stays_readable() {
        begin();
        Map<String, Object> form = engineer.form(path + "/draft/item/doors");
        form.putAll(confirm("doors", "Look at the doors and their hinges"));
        assertThat(engineer.send(path + "/draft/item/doors", form).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path + "/draft"))
                .containsSubsequence("What it changes", "changed", "Look at the doors", "and their hinges")
                .contains("has this item open again");

        act(engineer, "proposal");
        assertThat(engineer.page(path + "/draft")).contains("You wrote in it").doesNotContain("Release revision 2");
        assertThat(quality.page(path + "/draft")).contains("Release revision 2");

        Map<String, Object> wrong = quality.form(path + "/draft");
        wrong.put("password", "guess");
        Response refused = quality.send(path + "/draft/release", wrong);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.asString()).contains("That is not your password");
        wrong.put("password", Cast.PASSWORD);
        assertThat(quality.send(path + "/draft/release", wrong).header("Location"))
                .endsWith(path);

        assertThat(releases.sheetInForce(sheet.code()).orElseThrow().revision()).isEqualTo(2);
        assertThat(engineer.page(path)).contains("and their hinges", "side by side with revision 1");
        assertThat(engineer.page(path + "?revision=1")).contains("not in force").doesNotContain("hinges");
        assertThat(engineer.page(path + "/changes?from=1&to=2"))
                .containsSubsequence("One part differs", "Look at the doors", "<del>Look at the doors</del>", "<ins>");
    }

    @Test
    void a_faulty_field_comes_back_with_what_was_typed_and_keeps_nothing() {
        begin();
        Map<String, Object> form = engineer.form(path + "/draft/item/frame");
        form.putAll(confirm("frame", "Look over the frame with a lamp"));
        form.put("plannedMinutes", "soon");
        Response back = engineer.send(path + "/draft/item/frame", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("with a lamp", "value=\"soon\"", "id=\"plannedMinutes-fault\"");
        assertThat(engineer.page(path + "/draft")).doesNotContain("with a lamp");
    }

    @Test
    void an_unfinished_draft_is_kept_and_says_at_the_item_what_is_missing() {
        begin();
        Map<String, Object> form = engineer.form(path + "/draft/item");
        form.putAll(confirm("lamps", "Try the lamps"));
        form.put("after", "nothing-there");
        assertThat(engineer.send(path + "/draft/item", form).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path + "/draft"))
                .contains("Try the lamps", "comes after nothing-there, but the sheet has no such item")
                .doesNotContain("Propose for release");
    }

    @Test
    void items_change_places_and_go_but_one_stays() {
        begin();
        Map<String, Object> up = engineer.form(path + "/draft");
        up.put("to", "up");
        engineer.send(path + "/draft/item/doors/place", up);
        assertThat(engineer.page(path + "/draft")).containsSubsequence("id=\"item-doors\"", "id=\"item-frame\"");
        engineer.send(path + "/draft/item/frame/removal", engineer.form(path + "/draft"));
        assertThat(engineer.page(path + "/draft")).doesNotContain("id=\"item-frame\"");
        engineer.send(path + "/draft/item/doors/removal", engineer.form(path + "/draft"));
        assertThat(engineer.page(path + "/draft")).contains("id=\"item-doors\"");
    }

    @Test
    void another_kind_of_ask_shows_its_fields_and_a_reading_is_kept_with_its_limits() {
        begin();
        Map<String, Object> form = engineer.form(path + "/draft/item/frame");
        form.putAll(confirm("frame", "Measure the gap"));
        form.put("asks", "measure");
        form.put("redraw", "yes");
        assertThat(engineer.send(path + "/draft/item/frame", form).asString()).contains("name=\"legalUpper\"");
        form.remove("redraw");
        form.putAll(Map.of("quantity", "gap", "unit", "mm", "worksUpper", "4", "legalUpper", "3"));
        assertThat(engineer.send(path + "/draft/item/frame", form).asString()).contains("Name the rule and the clause");
        form.put("legalSource", "works drawing of a test");
        assertThat(engineer.send(path + "/draft/item/frame", form).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path + "/draft"))
                .contains("at most 3 (works drawing of a test)", "is laxer than the legal limit");
    }

    @Test
    void whoever_writes_on_what_was_changed_meanwhile_is_told_and_loses_nothing() {
        begin();
        Map<String, Object> form = engineer.form(path + "/draft/item/frame");
        Map<String, Object> other = quality.form(path + "/draft/item/doors");
        other.putAll(confirm("doors", "Look at the doors twice"));
        assertThat(quality.send(path + "/draft/item/doors", other).statusCode()).isEqualTo(303);
        form.putAll(confirm("frame", "Look over the frame at length"));
        Response back = engineer.send(path + "/draft/item/frame", form);
        assertThat(back.statusCode()).isEqualTo(409);
        assertThat(back.asString()).contains("was changed since you looked", "at length");
    }

    @Test
    void a_script_keeps_proposes_and_another_releases_it() {
        Map<String, Object> what = Cast.AUDITOR.asks().get(api).jsonPath().getMap("what");
        var keep = Map.of("id", UUID.randomUUID(), "draft", changed(what), "base", 1, "seen", 0);
        put(Cast.WORKS_ENGINEER, keep).then().statusCode(201);
        put(Cast.WORKS_ENGINEER, keep).then().statusCode(200);
        long seen = draft().getLong("seen");
        assertThat(keys(post(Cast.QUALITY_ENGINEER, "release", seen))).containsExactly("process.notProposed");
        assertThat(keys(post(Cast.QUALITY_ENGINEER, "proposal", seen))).containsExactly("process.notYourDraft");
        post(Cast.WORKS_ENGINEER, "proposal", seen).then().statusCode(201);
        seen = draft().getLong("seen");
        assertThat(keys(post(Cast.WORKS_ENGINEER, "release", seen))).containsExactly("process.ownDraft");
        assertThat(keys(post(Cast.QUALITY_ENGINEER, "release", seen - 1))).containsExactly("process.draftChangedSince");
        var release = Map.of("id", UUID.randomUUID(), "seen", seen, "password", Cast.PASSWORD);
        send(Cast.QUALITY_ENGINEER, "release", release).then().statusCode(201);
        send(Cast.QUALITY_ENGINEER, "release", release).then().statusCode(200);
        assertThat(Cast.AUDITOR.asks().get(api).jsonPath().getInt("revision")).isEqualTo(2);
        Cast.WORKS_ENGINEER.asks().get(api + "/draft").then().statusCode(404);
    }

    @Test
    void a_draft_overtaken_by_another_release_is_looked_at_again() {
        begin();
        sheet.next(OwnSheet.item("frame", "Look over the frame from below", TICK, 5));
        assertThat(engineer.page(path + "/draft")).contains("Meanwhile revision 2 came into force");
        assertThat(engineer.send(path + "/draft/base", engineer.form(path + "/draft"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(engineer.page(path + "/draft")).contains("What it changes against revision 2");
    }

    @Test
    void a_discarded_draft_is_gone_and_nothing_came_into_force() {
        begin();
        assertThat(engineer.send(path + "/draft/discard", engineer.form(path + "/draft"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(engineer.page(path + "/draft")).contains("Begin a draft from revision 1");
        assertThat(releases.sheetInForce(sheet.code()).orElseThrow().revision()).isEqualTo(1);
    }

    @Test
    void a_new_sheet_begins_as_a_copy() {
        String code = sheet.code() + "-B";
        Map<String, Object> form = engineer.form("/process/sheets/new");
        form.putAll(Map.of("code", code, "title", "Second survey", "model", sheet.code()));
        assertThat(engineer.send("/process/sheets/new", form).header("Location"))
                .endsWith("/process/sheets/" + code + "/draft");
        assertThat(engineer.page("/process/sheets/" + code + "/draft"))
                .contains("Second survey", "Look over the frame", "to be revision 1");
        assertThat(releases.sheetInForce(code)).isEmpty();
    }

    /** Begun, shown with a form for its first part, and discarded again, so that no other test meets it. */
    @ParameterizedTest
    @CsvSource({
        "joints/works,joint/HV-LUG-PACK,Target torque",
        "stages/works,stage/intake,Number",
        "routes/BUS-12M,leg/fitting,Check sheet"
    })
    void every_other_paper_is_drafted_the_same_way(String paper, String part, String field) {
        String draft = "/process/" + paper + "/draft";
        Map<String, Object> form = engineer.form(draft);
        assertThat(engineer.send(draft, form).statusCode()).isEqualTo(303);
        assertThat(engineer.page(draft)).contains("draft in hand", "says the same as the revision in force");
        assertThat(engineer.page(draft + "/" + part)).contains(field);
        assertThat(engineer.send(draft + "/discard", engineer.form(draft)).statusCode())
                .isEqualTo(303);
    }

    private void begin() {
        Map<String, Object> form = engineer.form(path + "/draft");
        assertThat(engineer.send(path + "/draft", form).statusCode()).isEqualTo(303);
    }

    private void act(Browsing who, String act) {
        assertThat(who.send(path + "/draft/" + act, who.form(path + "/draft")).statusCode())
                .isEqualTo(303);
    }

    private static Map<String, Object> confirm(String key, String title) {
        return Map.of(
                "key", key,
                "title", title,
                "asks", "confirm",
                "condition", "NONE",
                "plannedMinutes", "5",
                "tries", "1");
    }

    private static Map<String, Object> changed(Map<String, Object> what) {
        Map<String, Object> inner = new LinkedHashMap<>(map(what.get("sheet")));
        inner.put("title", "Survey of a test, second");
        Map<String, Object> outer = new LinkedHashMap<>(what);
        outer.put("sheet", inner);
        return outer;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    private JsonPath draft() {
        return Cast.WORKS_ENGINEER.asks().get(api + "/draft").jsonPath();
    }

    private Response put(Cast who, Map<String, ?> body) {
        return who.asks().contentType(ContentType.JSON).body(body).put(api + "/draft");
    }

    private Response post(Cast who, String act, long seen) {
        return act.equals("release")
                ? send(who, act, Map.of("id", UUID.randomUUID(), "seen", seen, "password", Cast.PASSWORD))
                : send(who, act, Map.of("id", UUID.randomUUID(), "seen", seen));
    }

    private Response send(Cast who, String act, Map<String, ?> body) {
        return who.asks().contentType(ContentType.JSON).body(body).post(api + "/draft/" + act);
    }

    private static List<String> keys(Response response) {
        assertThat(response.statusCode()).isEqualTo(409);
        return response.jsonPath().getList("reasons.key");
    }
}
