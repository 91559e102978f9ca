package wainbook.quality.record;

import java.util.Comparator;
import java.util.List;

/**
 * Of all tests of one night, those that stand when it is allowed that so large a share of what stands is chance: the largest k
 * with p(k) ≤ k · share / m, and all below it (Y. Benjamini and Y. Hochberg, J. Royal Statistical Society B 57(1), 1995; from
 * memory).
 */
final class FalseDiscoveries {

    private FalseDiscoveries() {}

    static List<Question> standing(List<Question> tests, double share) {
        List<Question> sorted =
                tests.stream().sorted(Comparator.comparing(Question::chance)).toList();
        int stand = 0;
        for (int k = 1; k <= sorted.size(); k++) {
            if (sorted.get(k - 1).chance() <= k * share / sorted.size()) {
                stand = k;
            }
        }
        return sorted.subList(0, stand);
    }
}
