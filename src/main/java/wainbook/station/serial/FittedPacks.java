package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.pack.WhereFitted;

/** Which vehicle a pack is fitted in, by the serials that stand on the vehicles' records. */
@ApplicationScoped
class FittedPacks implements WhereFitted {

    @Override
    public Optional<String> order(String serial) {
        return PartSerial.ordersWith(serial).stream().findFirst();
    }

    @Override
    public Map<String, String> orders() {
        return PartSerial.<PartSerial>listAll().stream()
                .collect(Collectors.toMap(row -> row.serialNumber, row -> row.workOrder, (one, other) -> one));
    }
}
