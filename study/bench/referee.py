"""One question, asked by one referee in a process of its own; the answer as lines of JSON.

    python3 bench/referee.py duckdb|spark DIR QUESTION [--threads 2] [--executors]

QUESTION "none" only starts the engine. With --executors Spark works with two executors as processes of their own.
"""

import argparse
import json
from pathlib import Path

from questions import QUESTIONS, RENAMED

TABLES = ["events", "animals"]


def duckdb_rows(asked, sql):
    import duckdb

    db = duckdb.connect()
    db.execute(f"set threads = {asked.threads}")
    for table in TABLES:
        db.execute(f"create view {table} as select * from read_parquet('{asked.dir}/{table}/*.parquet')")
    rows = db.execute(sql)
    names = [column[0] for column in rows.description]
    return [dict(zip(names, row)) for row in rows.fetchall()]


def spark_rows(asked, sql):
    from pyspark.sql import SparkSession

    master = "local-cluster[2,1,1024]" if asked.executors else f"local[{asked.threads}]"
    spark = (
        SparkSession.builder.master(master)
        .config("spark.ui.enabled", "false")
        .config("spark.sql.shuffle.partitions", 2 * asked.threads)
        .config("spark.driver.bindAddress", "127.0.0.1")
        .config("spark.driver.host", "127.0.0.1")
        .config("spark.executor.memory", "1g")
        .getOrCreate()
    )
    for table in TABLES:
        spark.read.parquet(f"{asked.dir}/{table}").createOrReplaceTempView(table)
    rows = [row.asDict() for row in spark.sql(sql).collect()]
    spark.stop()
    return rows


def main():
    read = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    read.add_argument("engine", choices=["duckdb", "spark"])
    read.add_argument("dir", type=Path)
    read.add_argument("question", choices=[*QUESTIONS, "none"])
    read.add_argument("--threads", type=int, default=2)
    read.add_argument("--executors", action="store_true")
    asked = read.parse_args()
    sql = "select 1 as one" if asked.question == "none" else QUESTIONS[asked.question]()
    rows = {"duckdb": duckdb_rows, "spark": spark_rows}[asked.engine](asked, sql)
    for row in rows:
        print(json.dumps({RENAMED.get(name, name): value for name, value in row.items()}))


if __name__ == "__main__":
    main()
