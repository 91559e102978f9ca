package wainbook.engineering;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;

/** What a field may hold where its type and {@link Domain} cannot tell: a rule of its own, asked like the others. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Allowed {

    /** Made anew wherever it is asked, so it has a constructor without arguments. */
    interface Rule {
        List<Fault> faults(String field, Object value);
    }

    Class<? extends Rule> value();
}
