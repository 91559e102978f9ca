package wainbook.page;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.Dependent;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Named;
import java.time.ZoneId;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The zone that pages write times in, until a room that knows the works says otherwise. */
@Dependent
class Times {

    @Produces
    @Named("formats")
    @DefaultBean
    Formats formats(@ConfigProperty(name = "wainbook.zone", defaultValue = "Europe/London") String zone) {
        return new Formats(ZoneId.of(zone));
    }
}
