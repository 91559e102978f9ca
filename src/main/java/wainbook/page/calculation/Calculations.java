package wainbook.page.calculation;

import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import wainbook.engineering.Calculation;
import wainbook.engineering.electrical.Bonding;
import wainbook.engineering.electrical.Discharge;
import wainbook.engineering.electrical.IsolationCombined;
import wainbook.engineering.electrical.IsolationDirect;
import wainbook.engineering.electrical.IsolationVoltmeter;
import wainbook.engineering.electrical.MonitorTestResistor;
import wainbook.engineering.electrical.Precharge;
import wainbook.engineering.electrical.YCapacitorEnergy;
import wainbook.engineering.flow.Takt;
import wainbook.engineering.measurement.Calibration;
import wainbook.engineering.measurement.CheckCharacter;
import wainbook.engineering.measurement.Containment;
import wainbook.engineering.measurement.Drift;
import wainbook.engineering.measurement.GaugeStudy;
import wainbook.engineering.measurement.IndividualsChart;
import wainbook.engineering.measurement.Vin;
import wainbook.engineering.statistics.Capability;
import wainbook.engineering.tightening.Extension;
import wainbook.engineering.tightening.Preload;
import wainbook.engineering.tightening.Tightening;
import wainbook.engineering.tightening.TighteningOrder;

/** Every calculation there is, by name: the pure ones, and those that other rooms offer as beans. */
@Singleton
public class Calculations {

    static final List<Calculation<?, ?>> PURE = List.of(
            new IsolationVoltmeter(),
            new IsolationDirect(),
            new IsolationCombined(),
            new Bonding(),
            new Discharge(),
            new YCapacitorEnergy(),
            new MonitorTestResistor(),
            new Precharge(),
            new Tightening(),
            new TighteningOrder(),
            new Extension(),
            new Preload(),
            new Calibration(),
            new Containment(),
            new IndividualsChart(),
            new Drift(),
            new GaugeStudy(),
            new Capability(),
            new Vin(),
            new CheckCharacter(),
            new Takt());

    private final Map<String, Sheet<?, ?>> sheets = new TreeMap<>();

    @Inject
    Calculations(@Any Instance<Calculation<?, ?>> offered) {
        this(Stream.concat(PURE.stream(), offered.stream()));
    }

    Calculations(Stream<? extends Calculation<?, ?>> all) {
        all.map(Sheet::new).forEach(sheet -> {
            if (sheets.put(sheet.name(), sheet) != null) {
                throw new IllegalStateException("two calculations are called " + sheet.name());
            }
        });
    }

    List<Sheet<?, ?>> all() {
        return List.copyOf(sheets.values());
    }

    Optional<Sheet<?, ?>> named(String name) {
        return Optional.ofNullable(sheets.get(name));
    }
}
