-- Every import that was taken in.

create table import_record (
  id          uuid primary key,
  sheet       varchar(40) not null,
  file_name   varchar(200) not null,
  row_count   integer not null,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);
