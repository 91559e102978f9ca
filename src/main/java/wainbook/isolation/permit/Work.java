package wainbook.isolation.permit;

/** What a paper allows, to the word: one paper, one job. */
public record Work(String what, String excluded, String hazards) {

    public Work {
        if (what.isBlank()) {
            throw new IllegalArgumentException("a permit names the exact work");
        }
    }
}
