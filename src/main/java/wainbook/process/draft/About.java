package wainbook.process.draft;

import java.util.Arrays;
import java.util.Optional;
import wainbook.ledger.Subject;
import wainbook.page.Words;

/** Which of the works' papers is meant: one check sheet, one route, one variant's plan; the joints or the stages as a whole. */
public record About(Thing thing, String called) {

    /** The sorts of paper that are revised. */
    public enum Thing {
        SHEET("sheets"),
        JOINTS("joints"),
        ROUTE("routes"),
        PLAN("plans"),
        STAGES("stages");

        private final String word;

        Thing(String word) {
            this.word = word;
        }

        /** As addresses have it. */
        public String word() {
            return word;
        }

        /** Whether the works has one of it only. */
        public boolean single() {
            return this == JOINTS || this == STAGES;
        }
    }

    public static final String WHOLE_WORKS = Subject.works().code();

    public static final About JOINTS = new About(Thing.JOINTS, WHOLE_WORKS);
    public static final About STAGES = new About(Thing.STAGES, WHOLE_WORKS);

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    public About {
        if (!called.matches(CODE)) {
            throw new IllegalArgumentException("a paper is called by a code, not: " + called);
        }
    }

    public static About sheet(String code) {
        return new About(Thing.SHEET, code);
    }

    public static About route(String code) {
        return new About(Thing.ROUTE, code);
    }

    public static About plan(String variant) {
        return new About(Thing.PLAN, variant);
    }

    /** Reads what stands in an address; empty if there can be no such paper. */
    public static Optional<About> of(String word, String called) {
        return Arrays.stream(Thing.values())
                .filter(thing -> thing.word.equals(word))
                .filter(thing -> called.matches(CODE) && (!thing.single() || called.equals(WHOLE_WORKS)))
                .map(thing -> new About(thing, called))
                .findFirst();
    }

    /** The stream in which its drafts and releases are said. */
    public Subject subject() {
        return thing == Thing.SHEET ? Subject.checkSheet(called) : Subject.works();
    }

    /** As a sentence speaks of it. */
    public String inWords() {
        return thing.single() ? Words.of("process.whole." + thing) : called;
    }

    public String path() {
        return "/process/" + thing.word + "/" + called;
    }
}
