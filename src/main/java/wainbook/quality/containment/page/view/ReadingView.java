package wainbook.quality.containment.page.view;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import wainbook.engineering.Plain;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.Recheck;
import wainbook.quality.QualitySaying.Worked;
import wainbook.quality.containment.vehicle.VehicleDoubt.Reading;

/**
 * A reading in question as pages show it.
 *
 * @param title of the check item or joint
 */
public record ReadingView(Reading reading, String title) {

    private static final String NOTHING = "–";

    public Doubted said() {
        return reading.said();
    }

    /** What a form sends to name it. */
    public String key() {
        return said().entry() + ":" + said().place();
    }

    /** Which fastener or cell of the entry; empty where the entry is one reading. */
    public String where() {
        if (said().place() == 0) {
            return "";
        }
        return Words.of(said().joint().isPresent() ? "quality.bolt" : "quality.cell", said().place());
    }

    public String read() {
        return said().reading().map(BigDecimal::toPlainString).orElse("");
    }

    public String limits() {
        if (said().lower().isEmpty() && said().upper().isEmpty()) {
            return NOTHING;
        }
        String lower = said().lower().map(BigDecimal::toPlainString).orElse("…");
        String upper = said().upper().map(BigDecimal::toPlainString).orElse("…");
        return Words.of("quality.limits", lower, upper);
    }

    /** From where to where it can have been. */
    public Optional<String> range() {
        return said().worked().map(worked -> Words.of("quality.range", text(worked.low()), text(worked.high())));
    }

    public String gravity() {
        return Words.of("quality.gravity." + said().gravity().name());
    }

    public String verdict() {
        return Words.of("quality.verdict." + said().verdict().name());
    }

    public String verdictSign() {
        return switch (said().verdict()) {
            case SURE_OUT -> "fail";
            case POSSIBLE -> "alert";
            case SAFE -> "done";
        };
    }

    public String verdictMeaning() {
        return switch (said().verdict()) {
            case SURE_OUT -> "danger";
            case POSSIBLE -> "warn";
            case SAFE -> "safe";
        };
    }

    public String ground() {
        return Words.of("quality.ground." + said().ground().name());
    }

    public boolean workable() {
        return said().worked().isPresent();
    }

    public String good() {
        return worked(Worked::goodPercent);
    }

    public String found() {
        return worked(Worked::foundPercent);
    }

    public String best() {
        return worked(Worked::best);
    }

    public String even() {
        return worked(Worked::even);
    }

    public String worst() {
        return worked(Worked::worst);
    }

    public String low() {
        return worked(Worked::low);
    }

    public String high() {
        return worked(Worked::high);
    }

    private String worked(java.util.function.Function<Worked, BigDecimal> part) {
        return said().worked().map(part).map(ReadingView::text).orElse(NOTHING);
    }

    /** To five figures: enough to compare with a limit, few enough to read. */
    private static String text(BigDecimal value) {
        return Plain.text(value.round(new MathContext(5)).stripTrailingZeros().toPlainString());
    }

    /** What was decided, in a sentence; empty while it is open. */
    public Optional<String> decision() {
        return reading.decision().map(ReadingView::inWords);
    }

    private static String inWords(ReadingsDecided said) {
        String what = Words.of("quality.disposition." + said.disposition().name());
        return Words.of("quality.decided", what, said.reason())
                + said.recheck()
                        .map(ReadingView::inWords)
                        .map(words -> " " + words)
                        .orElse("");
    }

    private static String inWords(Recheck check) {
        return Words.of(
                "quality.recheckedBy",
                check.by(),
                check.instrument().orElse(NOTHING),
                check.lowest().map(BigDecimal::toPlainString).orElse(NOTHING),
                check.highest().map(BigDecimal::toPlainString).orElse(NOTHING));
    }
}
