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
import wainbook.engineering.balance.Balance;
import wainbook.engineering.electrical.ArcEnergy;
import wainbook.engineering.electrical.BondBetweenParts;
import wainbook.engineering.electrical.Bonding;
import wainbook.engineering.electrical.Decay;
import wainbook.engineering.electrical.Discharge;
import wainbook.engineering.electrical.IsolationCombined;
import wainbook.engineering.electrical.IsolationDirect;
import wainbook.engineering.electrical.IsolationSuspect;
import wainbook.engineering.electrical.IsolationTwoVoltmeters;
import wainbook.engineering.electrical.IsolationVoltmeter;
import wainbook.engineering.electrical.MonitorTestResistor;
import wainbook.engineering.electrical.PackVoltages;
import wainbook.engineering.electrical.Precharge;
import wainbook.engineering.electrical.PrechargeCheck;
import wainbook.engineering.electrical.VoltageClass;
import wainbook.engineering.electrical.YCapacitorEnergy;
import wainbook.engineering.energy.Carbon;
import wainbook.engineering.energy.ChargingTime;
import wainbook.engineering.energy.DutyTrace;
import wainbook.engineering.energy.Gradeability;
import wainbook.engineering.energy.Packs;
import wainbook.engineering.flow.ForecastScore;
import wainbook.engineering.flow.SerialLine;
import wainbook.engineering.flow.Takt;
import wainbook.engineering.measurement.Agreement;
import wainbook.engineering.measurement.Calibration;
import wainbook.engineering.measurement.CalibrationInterval;
import wainbook.engineering.measurement.CheckCharacter;
import wainbook.engineering.measurement.ConformanceProbability;
import wainbook.engineering.measurement.Containment;
import wainbook.engineering.measurement.CoverageFactor;
import wainbook.engineering.measurement.DigitPreference;
import wainbook.engineering.measurement.Drift;
import wainbook.engineering.measurement.ElementString;
import wainbook.engineering.measurement.GaugeStudy;
import wainbook.engineering.measurement.GaugeStudyByRanges;
import wainbook.engineering.measurement.IndividualsChart;
import wainbook.engineering.measurement.TooLittleScatter;
import wainbook.engineering.measurement.Vin;
import wainbook.engineering.statistics.AcceptancePlan;
import wainbook.engineering.statistics.AttributeChart;
import wainbook.engineering.statistics.Capability;
import wainbook.engineering.statistics.CapabilityNeeded;
import wainbook.engineering.statistics.Cusum;
import wainbook.engineering.statistics.DefectRate;
import wainbook.engineering.statistics.Ewma;
import wainbook.engineering.statistics.RateInterval;
import wainbook.engineering.statistics.RolledYield;
import wainbook.engineering.statistics.ShortRun;
import wainbook.engineering.statistics.SubgroupChart;
import wainbook.engineering.statistics.ToleranceInterval;
import wainbook.engineering.tightening.Extension;
import wainbook.engineering.tightening.Preload;
import wainbook.engineering.tightening.PreloadScatter;
import wainbook.engineering.tightening.PropertyClass;
import wainbook.engineering.tightening.Tightening;
import wainbook.engineering.tightening.TighteningOrder;
import wainbook.engineering.tightening.TorqueUnit;
import wainbook.engineering.weights.AxleLoads;
import wainbook.engineering.weights.RecoveryRate;
import wainbook.engineering.weights.UnladenWeight;

/** Every calculation there is, by name: the pure ones, and those that other rooms offer as beans. */
@Singleton
public class Calculations {

    static final List<Calculation<?, ?>> PURE = List.of(
            new IsolationVoltmeter(),
            new IsolationDirect(),
            new IsolationCombined(),
            new PackVoltages(),
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
            new VoltageClass(),
            new ArcEnergy(),
            new Decay(),
            new PrechargeCheck(),
            new IsolationSuspect(),
            new IsolationTwoVoltmeters(),
            new BondBetweenParts(),
            new PreloadScatter(),
            new PropertyClass(),
            new TorqueUnit(),
            new ConformanceProbability(),
            new CoverageFactor(),
            new CalibrationInterval(),
            new Agreement(),
            new ElementString(),
            new GaugeStudyByRanges(),
            new DigitPreference(),
            new TooLittleScatter(),
            new SubgroupChart(),
            new AttributeChart(),
            new Cusum(),
            new Ewma(),
            new ToleranceInterval(),
            new RateInterval(),
            new AcceptancePlan(),
            new RolledYield(),
            new DefectRate(),
            new ShortRun(),
            new CapabilityNeeded(),
            new Takt(),
            new SerialLine(),
            new ForecastScore(),
            new Balance(),
            new DutyTrace(),
            new Packs(),
            new AxleLoads(),
            new Gradeability(),
            new ChargingTime(),
            new RecoveryRate(),
            new UnladenWeight(),
            new Carbon());

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

    /** A working as its page shows it, for whoever prints one; empty where there is no such calculation or no working. */
    public Optional<Worked> worked(String name, Map<String, String> inputs) {
        return named(name).flatMap(sheet -> sheet.answer(inputs).worked());
    }

    /** An input in words, with its unit. */
    public static String inputInWords(String calculation, String input) {
        return Table.head(calculation, input);
    }

    List<Sheet<?, ?>> all() {
        return List.copyOf(sheets.values());
    }

    Optional<Sheet<?, ?>> named(String name) {
        return Optional.ofNullable(sheets.get(name));
    }
}
