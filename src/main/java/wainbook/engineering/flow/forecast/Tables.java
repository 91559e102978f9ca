package wainbook.engineering.flow.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import wainbook.engineering.flow.forecast.model.Minutes;

/** Times to draw, the histories among them side by side in one array. */
final class Tables {

    private final Minutes[] times;
    private final int[] begin;
    private final int[] size;
    private final double[] values;

    Tables(List<Minutes> all) {
        times = all.toArray(Minutes[]::new);
        begin = new int[times.length];
        size = new int[times.length];
        IdentityHashMap<Minutes, Integer> laid = new IdentityHashMap<>();
        var parts = new ArrayList<double[]>();
        int length = 0;
        for (int i = 0; i < times.length; i++) {
            if (times[i] instanceof Minutes.Drawn drawn) {
                double[] sorted = drawn.values();
                Integer place = laid.putIfAbsent(drawn, length);
                begin[i] = place == null ? length : place;
                size[i] = sorted.length;
                if (place == null) {
                    parts.add(sorted);
                    length += sorted.length;
                }
            }
        }
        values = parts.stream().flatMapToDouble(Arrays::stream).toArray();
    }

    /** As {@link Minutes#at} of the time with this number. */
    double at(int number, double u) {
        int n = size[number];
        return n > 0 ? values[begin[number] + (int) (u * n)] : times[number].at(u);
    }

    Minutes of(int number) {
        return times[number];
    }
}
