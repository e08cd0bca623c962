# Said by the scripts: arguments and choices by one argument, nothing else.
client-close = Close
