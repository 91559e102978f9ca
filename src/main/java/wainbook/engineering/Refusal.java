package wainbook.engineering;

/**
 * Why readings cannot be true together.
 *
 * @param key stable, for scripts: {@code wrong-rail}
 * @param impossible what cannot be; text under {@code engineering.refusal.<key>}
 * @param check what to look at before trying again; text under {@code engineering.refusal.<key>.check}
 */
public record Refusal(String key, Sentence impossible, Sentence check) {

    static Refusal of(String key, Object... figures) {
        return new Refusal(
                key,
                Sentence.of("engineering.refusal." + key, figures),
                Sentence.of("engineering.refusal." + key + ".check", figures));
    }
}
