package squaresheet.house;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The notice on a room's door: the floor it stands on and the rooms its code uses, no more and no fewer. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PACKAGE)
public @interface Room {

  /** The floor of the room, 0 (the ground) and up; an arrow may only go to a lower floor. */
  int floor();

  /** The names of the rooms this one uses, in floor order. */
  String[] uses() default {};
}
