package wainbook.tour;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.arc.Arc;
import io.restassured.response.Response;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.house.Browsing;
import wainbook.setup.DemoWorks;
import wainbook.setup.Folder;

/**
 * What a demonstration does not have by itself: a help call, a sheet in its second revision, a draft in hand, files sent in,
 * and an order, a person and an item whose names are as long as names get.
 */
final class StageSetting {

    static final String LONG_ORDER = "WB-LANGER-NAME-2026-000000000001";
    static final String LONG_PERSON = "W-9999-ZWEIGSTELLE-NORD";
    static final String REVISED = "PACKS-HOOK26";
    static final String DRAFTED = "CTRL-BUS12";

    /** Invented, of eighty characters. */
    private static final String LONG_OPERATOR =
            "Quellmarscher Kraftverkehrsgesellschaft Unterwaldtal-Hinterfelden Betriebshof AG";

    private static final Asking INGRID = new Asking("ingrid");
    private static final Asking KOFI = new Asking("kofi");

    private StageSetting() {}

    static void set(String working) {
        INGRID.does("/orders/" + working + "/help-calls", Map.of("help", "MAINTENANCE", "workStands", true));
        revise();
        draft();
        longNames();
        containment();
        tools();
        stop();
        paper(working);
    }

    /** A day’s print, blank forms, one in use, and one that waits to be compared. */
    private static void paper(String working) {
        KOFI.does("/paper/for-vehicles", Map.of("sort", "ITEMS", "vehicles", List.of(working)));
        KOFI.does("/paper/blank", Map.of("sort", "ISOLATION", "count", 3));
        KOFI.does("/paper/blank", Map.of("sort", "PERMIT", "count", 2));
        KOFI.does("/paper/for-vehicles", Map.of("sort", "ISOLATION", "vehicles", List.of(working)));
        KOFI.does("/paper/F-0003/in-use", Map.of("vehicle", working));
        KOFI.does("/paper/F-0004/spoiled", Map.of("reason", "Torn in the folder"));
        String now = Arc.container().instance(Clock.class).get().instant().toString();
        INGRID.does(
                "/paper/F-0001/transcription",
                Map.of(
                        "vehicle",
                        working,
                        "photograph",
                        INGRID.handsIn("/paper/photographs", "/rehearsal/photograph.png"),
                        "lines",
                        List.of(Map.of("item", INGRID.firstOpen(working), "doer", "W-1001", "doneAt", now))));
    }

    /** One wrench is checked before work, and is out of the store. */
    private static void tools() {
        KOFI.does(
                "/instruments/TW-105/checks",
                Map.of("tester", "TT-01", "target", 25, "references", List.of(24.9, 25.1, 25)));
        KOFI.does("/instruments/TW-105/issues", Map.of("to", "W-1001", "place", "ST-1"));
    }

    /** A place where no vehicle stands, so that none is held by it. */
    private static void stop() {
        INGRID.does("/safety/stops", Map.of("station", "BAY-1", "words", "Oil on the floor beside the pit"));
    }

    /** A wrench of the demonstration is asked about, as if it had been dropped. */
    private static void containment() {
        KOFI.does(
                "/containments",
                Map.of(
                        "about",
                        Map.of("sort", "INSTRUMENT", "code", "TW-120"),
                        "reason",
                        "Dropped from the trolley, found on the floor"));
    }

    /** Where a folder that was sent in can be looked at. */
    static String sent(String user, Folder folder) {
        Browsing browsing = Browsing.as(user, DemoWorks.PASSWORD);
        Response answer = browsing.send(
                "/setup/works", browsing.form("/setup/works"), "works.zip", folder.packed(), "application/zip");
        assertThat(answer.statusCode()).isEqualTo(303);
        return answer.header("Location").replaceFirst("^.*?(?=/setup/)", "");
    }

    /** Written by one, released by another. */
    private static void revise() {
        String paper = "/process/sheets/" + REVISED;
        keep(paper, "Pack frames and packs, 26 t hook-loader, with renewed edge protection");
        INGRID.does(paper + "/draft/proposal", Map.of("seen", seen(paper)));
        KOFI.does(paper + "/draft/release", Map.of("seen", seen(paper), "password", DemoWorks.PASSWORD));
    }

    private static void draft() {
        keep(
                "/process/sheets/" + DRAFTED,
                "Hochvoltzwischenkreisentladewiderstandsprüfung und Niederspannungsbordnetzinbetriebnahme");
    }

    private static void keep(String paper, String title) {
        Map<String, Object> what = INGRID.get(paper).getMap("what");
        Map<String, Object> draft = new LinkedHashMap<>(what);
        Map<String, Object> sheet = new LinkedHashMap<>(inner(what.get("sheet")));
        sheet.put("title", title);
        List<Object> items = new java.util.ArrayList<>((List<?>) sheet.get("items"));
        Map<String, Object> first = new LinkedHashMap<>(inner(items.get(0)));
        first.put("title", first.get("title") + "; edges rounded and protected before anything is laid over them");
        items.set(0, first);
        sheet.put("items", items);
        draft.put("sheet", sheet);
        INGRID.keeps(
                paper + "/draft",
                Map.of("draft", draft, "base", INGRID.get(paper).getInt("revision"), "seen", 0));
    }

    private static long seen(String paper) {
        return INGRID.get(paper + "/draft").getLong("seen");
    }

    private static void longNames() {
        INGRID.does(
                "/orders",
                Map.of(
                        "number",
                        LONG_ORDER,
                        "operator",
                        LONG_OPERATOR,
                        "variant",
                        "bus-12m",
                        "route",
                        "BUS-12M",
                        "promisedOn",
                        "2027-02-01",
                        "facts",
                        List.of(Map.of("fact", "packs", "stated", "2"))));
        Browsing nadia = Browsing.as("nadia", DemoWorks.PASSWORD);
        Map<String, Object> form = new LinkedHashMap<>(nadia.form("/people/new"));
        form.putAll(Map.of(
                "number", LONG_PERSON,
                "name", "Konstantina-Aleksandra Papadimitrakopoulou-Winterscheidt von der Hagenmark",
                "user", "konstantina-aleksandra.papadimitriou",
                "password", "quay-side-morning-7",
                "roles", "technician"));
        assertThat(nadia.send("/people/new", form).statusCode()).isEqualTo(303);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> inner(Object value) {
        return (Map<String, Object>) value;
    }
}
