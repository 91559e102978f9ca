package wainbook.tour;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;

/** The pictures in {@code docs/guides}: taken again with {@code -Dguides=true} whenever the pages have changed. */
record GuidePictures(Eyes eyes, Stops stops) {

    private static final Path FOLDER = Path.of("docs/guides/pictures");

    void take() {
        String working = stops.at("packs");
        String inspected = stops.at("distribution");
        String finished = stops.inPhase("FINISHED");
        shot("amara", "/station/" + stops.at("final"), "station");
        shot("amara", "/orders/" + working + "/help", "help");
        shot("amara", "/orders/" + stops.at("controls") + "/report", "report");
        shot("amara", "/isolation", "isolations");
        shot("amara", "/isolation/" + working, "isolation");
        shot("amara", "/locks", "locks");
        shot("mateo", "/gates", "gates");
        shot("mateo", "/gates/" + inspected + "/distribution", "gate");
        shot("fatima", "/orders/" + stops.at("auxiliaries") + "/move", "move");
        shot("fatima", "/matters", "matters");
        shot("fatima", "/forecast", "forecast");
        shot("fatima", "/forecast/what-if?secondStation=commissioning#result", "what-if");
        shot("fatima", "/line/measures", "measures");
        shot("ingrid", "/process/sheets/" + StageSetting.DRAFTED + "/draft", "draft");
        shot("ingrid", "/process/sheets/" + StageSetting.REVISED + "/changes?from=1&to=2", "side-by-side");
        shot("ingrid", "/people/competences", "competences");
        shot("ingrid", "/instruments", "instruments");
        shot("leilani", "/handover", "handovers");
        shot("leilani", "/handover/" + finished, "handover");
        shot("ruben", "/trace?q=" + stops.vin(), "trace");
        shot("ruben", "/verification", "verification");
        shot("ruben", "/orders/" + stops.inPhase("HANDED_OVER"), "vehicle");
        shot("kofi", "/quality/charts/item/commissioning:bond-parts:1", "chart");
        shot("kofi", "/quality/yield", "yield");
        shot("kofi", stops.containment(), "containment");
        shot("kofi", "/instruments/due", "due");
        shot("ingrid", "/packs/PK70000006", "pack");
        shot("ewa", "/permits", "permits");
        shot("amara", "/safety", "safety");
        shot("amara", "/paper/print?from=3&to=3", "isolation-form");
        shot("ewa", "/paper/F-0001/comparison", "comparison");
        line(Path.of("docs/line.png"));
    }

    private void shot(String user, String path, String name) {
        Page page = sized(user, path, 1024, 768);
        page.screenshot(new Page.ScreenshotOptions().setPath(FOLDER.resolve(name + ".png")));
    }

    private void line(Path file) {
        Page page = sized("fatima", "/line", 1280, 960);
        page.screenshot(new Page.ScreenshotOptions().setPath(file));
    }

    private Page sized(String user, String path, int width, int height) {
        Page page = eyes.open(user, path);
        page.setViewportSize(width, height);
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        page.evaluate("document.fonts.ready.then(() => scrollTo(0, 0))");
        return page;
    }
}
