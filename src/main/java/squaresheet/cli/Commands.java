package squaresheet.cli;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, and hands the console to those that print. */
final class Commands implements IFactory {

  private final Console console;

  Commands(Console console) {
    this.console = console;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    for (Constructor<?> constructor : type.getDeclaredConstructors()) {
      if (constructor.getParameterCount() == 1
          && constructor.getParameterTypes()[0] == Console.class) {
        return type.cast(made(constructor));
      }
    }
    return CommandLine.defaultFactory().create(type);
  }

  private Object made(Constructor<?> constructor) throws Exception {
    try {
      return constructor.newInstance(console);
    } catch (InvocationTargetException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }
}
