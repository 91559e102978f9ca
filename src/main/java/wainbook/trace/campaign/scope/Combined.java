package wainbook.trace.campaign.scope;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.trace.campaign.CampaignSaying.Match;

/** Brings together what each term of a query found. */
public final class Combined {

    private Combined() {}

    /**
     * @param found of each term, the places by work order
     * @return the work orders that fit, each with every place that any term found there
     */
    public static Map<String, List<Because>> of(Match match, List<Map<String, List<Because>>> found) {
        Map<String, List<Because>> all = new TreeMap<>();
        found.forEach(term -> term.forEach((order, places) ->
                all.computeIfAbsent(order, key -> new ArrayList<>()).addAll(places)));
        Map<String, List<Because>> fitting = new LinkedHashMap<>();
        all.forEach((order, places) -> {
            long terms = found.stream().filter(term -> term.containsKey(order)).count();
            if (match == Match.ANY || terms == found.size()) {
                fitting.put(order, places.stream().distinct().toList());
            }
        });
        return fitting;
    }
}
