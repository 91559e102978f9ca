package wainbook.quality.chart;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;
import wainbook.quality.reading.AllReadings;
import wainbook.quality.reading.Reading;

/** The charts of the works. Drawn anew only when a vehicle's record has grown, and never while something is recorded. */
@ApplicationScoped
public class Charts {

    private record Drawn(List<Reading> of, List<ItemChart> charts) {}

    private final AllReadings readings;
    private final Releases releases;
    private final AtomicReference<Drawn> drawn = new AtomicReference<>(new Drawn(List.of(), List.of()));

    Charts(AllReadings readings, Releases releases) {
        this.readings = readings;
        this.releases = releases;
    }

    public List<ItemChart> all() {
        List<Reading> now = readings.inTime();
        Drawn known = drawn.get();
        if (known.of() == now) {
            return known.charts();
        }
        List<ItemChart> charts = sorted(now).entrySet().stream()
                .map(one -> ItemChart.of(one.getKey(), one.getValue()))
                .toList();
        drawn.set(new Drawn(now, charts));
        return charts;
    }

    public Optional<ItemChart> named(Charted charted) {
        return all().stream().filter(chart -> chart.of().equals(charted)).findFirst();
    }

    /** A chart of one kind of vehicle alone. */
    public Optional<ItemChart> named(Charted charted, String vehicleKind) {
        List<Reading> own = sorted(readings.inTime()).getOrDefault(charted, List.of()).stream()
                .filter(reading -> reading.vehicleKind().equals(vehicleKind))
                .toList();
        return own.isEmpty() ? Optional.empty() : Optional.of(ItemChart.of(charted, own));
    }

    private Map<Charted, List<Reading>> sorted(List<Reading> all) {
        Map<String, String> families = new HashMap<>();
        releases.joints().forEach(joint -> families.put(joint.code(), joint.toolKind()));
        Map<Charted, List<Reading>> sorted = new TreeMap<>(Charted.IN_ORDER);
        all.forEach(reading -> Charted.of(reading, joint -> families.getOrDefault(joint, "other"))
                .forEach(charted -> sorted.computeIfAbsent(charted, none -> new ArrayList<>())
                        .add(reading)));
        return sorted;
    }

    /** What is charted, in words, from what is in force; its code where that is gone. */
    public Titles titles() {
        Map<String, String> titles = new HashMap<>();
        releases.joints().forEach(joint -> titles.put(Charted.Sort.JOINT.word() + "/" + joint.code(), title(joint)));
        releases.sheets()
                .forEach(sheet -> sheet.items()
                        .forEach(item -> Titles.of(sheet.stage(), item).forEach(titles::putIfAbsent)));
        return new Titles(titles);
    }

    private static String title(Joint joint) {
        return joint.title();
    }
}
