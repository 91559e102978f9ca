package wainbook.engineering;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a number may be; on the element's type where a field holds a list. Numbers are finite even without it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE_USE)
public @interface Domain {

    /** Exclusive. */
    double above() default Double.NEGATIVE_INFINITY;

    /** Inclusive. */
    double from() default Double.NEGATIVE_INFINITY;

    /** Inclusive. */
    double to() default Double.POSITIVE_INFINITY;

    /** Exclusive. */
    double below() default Double.POSITIVE_INFINITY;

    /** The only values allowed, if any are named. */
    double[] oneOf() default {};
}
